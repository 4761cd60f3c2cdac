package spoolyard.scenarios.field;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Nearest;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.read.Node;

/**
 * Reads the keys of one mapping. Every key that is asked for is known; what is left over at the end is a fault. Got from
 * {@link MappingKind}, which also ends it.
 */
public final class MappingReader {
    private final Node.Mapping mapping;
    private final String type;
    private final Reading reading;
    private final boolean isMuted;
    private final Set<String> known = new LinkedHashSet<>();
    private final Map<String, Fault> missing = new LinkedHashMap<>();

    MappingReader(Node.Mapping mapping, String type, Reading reading, boolean isMuted) {
        this.mapping = mapping;
        this.type = type;
        this.reading = reading;
        this.isMuted = isMuted;
    }

    /**
     * Where the mapping stands.
     *
     * @return its origin
     */
    public Origin origin() {
        return mapping.origin();
    }

    /**
     * What collects the faults.
     *
     * @return the reading
     */
    public Reading reading() {
        return reading;
    }

    /**
     * The raw value of a key, which becomes known by this.
     *
     * @param key the key
     * @return what is written; empty if the key is not there
     */
    public Optional<Node> raw(String key) {
        known.add(key);
        reading.keys().note(type, key);
        return Optional.ofNullable(mapping.entries().get(key));
    }

    /**
     * A value that must be there.
     *
     * @param key the key
     * @param kind how to read it
     * @param <T> its type
     * @return the value; the stand-in after a fault
     */
    public <T> T required(String key, Kind<T> kind) {
        Optional<Node> node = raw(key);
        if (node.isPresent()) {
            return kind.read(node.get(), reading);
        }
        if (!isMuted) {
            String mend = "add " + key + ", or correct a misspelt key";
            followsFrom(reading.missing(origin().child(key), "Must be given.", mend), key);
        }
        return kind.standIn();
    }

    /**
     * A value that may be there.
     *
     * @param key the key
     * @param kind how to read it
     * @param <T> its type
     * @return the value; empty if the key is not there
     */
    public <T> Optional<T> optional(String key, Kind<T> kind) {
        return raw(key).map(node -> kind.read(node, reading));
    }

    /**
     * A value that may be there.
     *
     * @param key the key
     * @param kind how to read it
     * @param otherwise the value if the key is not there
     * @param <T> its type
     * @return the value
     */
    public <T> T optional(String key, Kind<T> kind, T otherwise) {
        return optional(key, kind).orElse(otherwise);
    }

    /**
     * The keys that were not asked for so far, as a mapping of their own; they become known by this.
     *
     * @return the rest
     */
    public Node.Mapping rest() {
        Map<String, Node> left = new LinkedHashMap<>(mapping.entries());
        left.keySet().removeAll(known);
        known.addAll(left.keySet());
        return new Node.Mapping(mapping.origin(), left);
    }

    /**
     * Says that a fault is there because keys are not; if one of them turns out to be misspelt, that alone is told.
     *
     * @param fault a fault that was added
     * @param keys the keys
     */
    public void followsFrom(Fault fault, String... keys) {
        for (String key : keys) {
            missing.put(key, fault);
        }
    }

    /**
     * Whether there are keys that were not asked for so far.
     *
     * @return true if there is any
     */
    public boolean hasMore() {
        return !known.containsAll(mapping.entries().keySet());
    }

    /** Reports the keys that nobody asked for; one that is a misspelt missing key in place of that. */
    void end() {
        Map<String, Node> left = new LinkedHashMap<>(mapping.entries());
        left.keySet().removeAll(known);
        left.forEach(this::unknown);
    }

    private void unknown(String key, Node value) {
        String list = String.join(", ", known);
        Optional<String> nearest = Nearest.to(key, missing.keySet()).or(() -> Nearest.to(key, known));
        nearest.map(missing::remove).ifPresent(reading.faults()::takeBack);
        String mend = nearest.map(near -> "rename it to " + near + ", or delete it")
                .orElse("delete it, or write it as one of these");
        reading.fault(FaultKind.UNKNOWN_KEY, value, "The key is unknown. Known here: " + list + ".", mend);
    }
}
