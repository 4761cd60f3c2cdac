package spoolyard.analysis.report;

import java.util.List;
import spoolyard.analysis.schedule.ChangeoverPrices;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.ChangeoverResult;
import spoolyard.core.record.ScrapCause;

/**
 * What a sequence came to in one replication. Immutable.
 *
 * @param cost purge, line time and work of the changeovers, and lateness from the due date, in the money that plans are
 *     judged by
 * @param purgeKg purged for colour, polymer and approval, kg
 * @param changeoverH time of the lines in changeovers, waits for people included, hours
 * @param goodSpools good spools of all lines
 * @param lateOrders orders late
 * @param lateSpoolDays spools times days late
 * @param unpackedOrders orders not packed when the run ends, late or not
 * @param isLate for each order, in book order, whether it is late
 */
public record PlanOutcome(
        double cost,
        double purgeKg,
        double changeoverH,
        double goodSpools,
        double lateOrders,
        double lateSpoolDays,
        double unpackedOrders,
        List<Boolean> isLate) {
    private static final double S_PER_DAY = 86_400;

    /** Copies the list. */
    public PlanOutcome {
        isLate = List.copyOf(isLate);
    }

    /**
     * Reduces a replication.
     *
     * @param book the plant and what plans are judged by; lines and orders are those that were run
     * @param result what the replication told
     * @return the outcome
     */
    public static PlanOutcome of(PlantBook book, RunResult result) {
        List<Promise> promises = Promise.all(book.plant(), result);
        ChangeoverPrices prices = new ChangeoverPrices(book);
        double money = promises.stream()
                .mapToDouble(promise -> lateMoney(book, promise))
                .sum();
        double lineS = 0;
        for (ChangeoverResult change : result.changeovers()) {
            lineS += prices.lineS(change);
            money += prices.money(change);
        }
        money += prices.weekEnds(result);
        return new PlanOutcome(
                money,
                purgeKg(result),
                lineS / 3600,
                result.flow().made(),
                Promise.lateOrders(promises),
                Promise.lateSpoolDays(promises),
                promises.size() - Promise.packedOrders(promises),
                promises.stream().map(Promise::isLate).toList());
    }

    private static double lateMoney(PlantBook book, Promise promise) {
        double perS = book.weights()
                .latePerS(promise.order().spools(), promise.order().weight());
        return promise.daysLate() * S_PER_DAY * perS;
    }

    private static double purgeKg(RunResult result) {
        return result.lines().stream()
                .mapToDouble(line -> line.scrapKg().get(ScrapCause.COLOUR_PURGE)
                        + line.scrapKg().get(ScrapCause.POLYMER_PURGE)
                        + line.scrapKg().get(ScrapCause.APPROVAL))
                .sum();
    }
}
