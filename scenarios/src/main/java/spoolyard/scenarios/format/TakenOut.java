package spoolyard.scenarios.format;

import java.util.Map;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Nearest;
import spoolyard.scenarios.read.Node;

/**
 * Reports each {@code null} of a patch that takes out nothing. A merge patch may do that; in a scenario it is a slip that
 * would go unseen.
 *
 * @param faults takes what is found
 */
record TakenOut(Faults faults) {
    void check(Node target, Node.Mapping patch) {
        Map<String, Node> there = target instanceof Node.Mapping mapping ? mapping.entries() : Map.of();
        patch.entries().forEach((key, value) -> {
            if (value instanceof Node.Nothing && !there.containsKey(key)) {
                report(key, value, there);
            }
            if (value instanceof Node.Mapping mapping) {
                check(there.getOrDefault(key, new Node.Nothing(value.origin())), mapping);
            }
        });
    }

    private void report(String key, Node value, Map<String, Node> there) {
        String mend = Nearest.to(key, there.keySet())
                .map(near -> "write " + near + ", give it a value, or delete the key")
                .orElse("give it a value, or delete the key");
        faults.add(new Fault(
                FaultKind.UNKNOWN_KEY, value.origin(), "null", "There must be such a key to take out.", mend));
    }
}
