package spoolyard.analysis.sequence;

import java.util.List;

/**
 * Ends of weeks at which a line is purged clean: what it makes next starts from a clean product, be it what it made before.
 * Immutable.
 *
 * @param workedS when they come, worked seconds since the start of the plan, rising
 * @param clean for each state of a line, products first and then its start, the product that it holds afterwards; -1 if it
 *     needs no purge
 * @param cost for each state, money of the purge, {@code >= 0}
 */
public record WeekEnds(List<Double> workedS, List<Integer> clean, List<Double> cost) {
    /** No such ends. */
    public static final WeekEnds NONE = new WeekEnds(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public WeekEnds {
        workedS = List.copyOf(workedS);
        clean = List.copyOf(clean);
        cost = List.copyOf(cost);
    }

    boolean areNone() {
        return workedS.isEmpty();
    }

    /** The cheaper and the shorter of each changeover and the same from clean. */
    Changeovers least(Changeovers straight) {
        Changeovers.Table table = Changeovers.table(straight.products());
        for (int from = 0; from <= straight.atStart(); from++) {
            int other = clean.get(from) < 0 ? from : clean.get(from);
            for (int to = 0; to <= straight.atEnd(); to++) {
                if (to != straight.atStart()) {
                    table.set(
                            from,
                            to,
                            Math.min(straight.cost(from, to), straight.cost(other, to)),
                            Math.min(straight.timeS(from, to), straight.timeS(other, to)));
                }
            }
        }
        return table.done();
    }
}
