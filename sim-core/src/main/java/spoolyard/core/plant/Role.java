package spoolyard.core.plant;

import java.util.List;

/**
 * A kind of worker. Immutable.
 *
 * @param name name used in files
 * @param zones groups of line names; member i looks after zones i, i + n, i + 2n ... where n members are present; empty
 *     means that everyone looks after every line
 * @param zonesAreStrict true: works only in the own zones; false: own zones first, then any other
 * @param priorities kinds of work from most to least urgent; kinds left out come after, in the order of {@link TaskKind}
 * @param relieves names of roles whose lines this role covers while one of them is on a break with relief
 */
public record Role(
        String name,
        List<List<String>> zones,
        boolean zonesAreStrict,
        List<TaskKind> priorities,
        List<String> relieves) {
    /** Copies the lists. */
    public Role {
        zones = zones.stream().map(List::copyOf).toList();
        priorities = List.copyOf(priorities);
        relieves = List.copyOf(relieves);
    }
}
