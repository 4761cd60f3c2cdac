package spoolyard.scenarios;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Walks the scenario schema, and files along it. What it finds is written {@code mapping.key}, and {@code
 * mapping.key=word} where the key takes one of several words; a list of words has the name of the key that holds it.
 */
final class SchemaWalk {
    private final JsonNode schema;
    private final SortedSet<String> used = new TreeSet<>();

    SchemaWalk(JsonNode schema) {
        this.schema = schema;
    }

    /** All keys and words of the schema. What a whole scenario must have is said of the same keys again, so it is left out. */
    SortedSet<String> all() {
        SortedSet<String> all = new TreeSet<>();
        collect(schema, "scenario", all);
        schema.get("$defs").properties().stream()
                .filter(def -> !def.getKey().equals("whole_scenario"))
                .forEach(def -> collect(def.getValue(), def.getKey(), all));
        return all;
    }

    private static void collect(JsonNode node, String name, SortedSet<String> all) {
        node.path("enum").forEach(word -> {
            if (!word.isNull()) {
                all.add(name + "=" + word.asText());
            }
        });
        for (Map.Entry<String, JsonNode> part : node.properties()) {
            if (part.getKey().equals("properties")) {
                part.getValue().properties().forEach(key -> {
                    all.add(name + "." + key.getKey());
                    collect(key.getValue(), name + "." + key.getKey(), all);
                });
            } else if (!part.getKey().equals("$defs")) {
                collect(part.getValue(), name, all);
            }
        }
        if (node.isArray()) {
            node.forEach(item -> collect(item, name, all));
        }
    }

    /** What the files walked so far used; a key that is taken out is not used. */
    SortedSet<String> used() {
        return used;
    }

    /** Walks a file. */
    void use(JsonNode file) {
        walk(schema, file, "scenario");
    }

    private void walk(JsonNode at, JsonNode value, String name) {
        if (value.isNull()) {
            return;
        }
        if (at.has("$ref")) {
            String target = at.get("$ref").asText().replaceFirst(".*/", "");
            walk(schema.get("$defs").get(target), value, target);
        }
        at.path("enum").forEach(word -> {
            if (word.asText().equals(value.asText())) {
                used.add(name + "=" + word.asText());
            }
        });
        at.path("anyOf").forEach(choice -> {
            if (isOfForm(choice, value)) {
                walk(choice, value, name);
            }
        });
        value.properties().forEach(entry -> walkKey(at, entry.getKey(), entry.getValue(), name));
        if (at.has("items") && value.isArray()) {
            value.forEach(item -> walk(at.get("items"), item, name));
        }
    }

    private void walkKey(JsonNode at, String key, JsonNode value, String name) {
        JsonNode known = at.path("properties").path(key);
        if (!known.isMissingNode()) {
            if (!value.isNull()) {
                used.add(name + "." + key);
            }
            walk(known, value, name + "." + key);
        } else if (at.path("additionalProperties").isObject()) {
            walk(at.get("additionalProperties"), value, name);
        }
    }

    /** Whether a value can be meant by one of several forms: a word, a text with a unit, or a mapping with these keys. */
    private boolean isOfForm(JsonNode choice, JsonNode value) {
        JsonNode form = choice.has("$ref")
                ? schema.get("$defs").get(choice.get("$ref").asText().replaceFirst(".*/", ""))
                : choice;
        if (form.has("pattern") && value.isTextual()) {
            return value.asText().matches(form.get("pattern").asText());
        }
        return !value.isObject()
                || form.path("additionalProperties").isObject()
                || value.properties().stream()
                        .allMatch(e -> form.path("properties").has(e.getKey()));
    }
}
