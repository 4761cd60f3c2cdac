package spoolyard.scenarios.format;

import java.util.LinkedHashMap;
import java.util.Map;
import spoolyard.scenarios.read.Node;

/** JSON Merge Patch over trees that remember their origin. Source: RFC 7396, section 2. */
public final class MergePatch {
    private MergePatch() {}

    /**
     * Applies a patch.
     *
     * @param target what is patched
     * @param patch keys to set; {@link Node.Nothing} takes a key out; anything but a mapping replaces the target
     * @return the result; each value keeps the origin of whichever side it came from
     */
    public static Node apply(Node target, Node patch) {
        return patch instanceof Node.Mapping keys ? apply(target, keys) : patch;
    }

    /**
     * Applies a patch that is a mapping.
     *
     * @param target what is patched; counts as empty if it is not a mapping
     * @param patch keys to set or take out
     * @return the result, with the origin of the patch
     */
    public static Node.Mapping apply(Node target, Node.Mapping patch) {
        Map<String, Node> entries =
                target instanceof Node.Mapping mapping ? new LinkedHashMap<>(mapping.entries()) : new LinkedHashMap<>();
        patch.entries().forEach((key, value) -> {
            if (value instanceof Node.Nothing) {
                entries.remove(key);
            } else {
                Node old = entries.getOrDefault(key, new Node.Nothing(value.origin()));
                entries.put(key, apply(old, value));
            }
        });
        return new Node.Mapping(patch.origin(), entries);
    }
}
