package spoolyard.core.process;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineResult.StoppageResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.LineUse;

/** Turns a line's ledger and clocks into its result at the end of a run. */
final class LineReport {
    private LineReport() {}

    static LineResult of(LineProcess line) {
        line.advance();
        line.countExcursions();
        LineLedger ledger = line.ledger();
        StateClock<LineState> states = line.clock().close();
        double inProcessKg =
                line.strands().stream().mapToDouble(Strand::inProcessKg).sum();
        long blockedTicks = ledger.blockedTicks
                + line.spindles().stream()
                        .mapToLong(AbstractSpindle::openBlockedTicks)
                        .sum();
        return new LineResult(
                line.description().name(),
                states.seconds(),
                ledger.goodSpools,
                ledger.rejectedSpools,
                ledger.goodKg,
                ledger.scrapByCause(),
                ledger.fedKg,
                inProcessKg,
                ledger.ratedKg,
                ledger.swaps,
                ledger.overflowsByCause(),
                ledger.overflowMByCause(),
                ledger.slowedLossKg,
                Ticks.toSeconds(blockedTicks),
                ledger.peakLevelM,
                ledger.swapWaits == 0 ? 0 : Ticks.toSeconds(ledger.swapWaitTicks) / ledger.swapWaits,
                Ticks.toSeconds(ledger.longestSwapWaitTicks),
                stoppages(line.stoppageClocks()),
                ledger.stepWasteByCause(),
                ledger.gauge.result(),
                use(line));
    }

    private static LineUse use(LineProcess line) {
        HeatLedger heat = line.clock().heat();
        MaterialLedger materials = line.ledger().materials;
        return new LineUse(
                heat.heatUps(),
                heat.periods(),
                heat.standbyS(),
                materials.uses(),
                materials.compoundKg(),
                line.hours().purgedAtWeekEnd(),
                heat.heaters());
    }

    /** One row a cause, the strands of a line added up. */
    private static List<StoppageResult> stoppages(List<StoppageClock> clocks) {
        Map<String, StoppageResult> byName = new LinkedHashMap<>();
        for (StoppageClock clock : clocks) {
            byName.merge(clock.cause().name(), clock.result(), LineReport::sum);
        }
        return List.copyOf(byName.values());
    }

    private static StoppageResult sum(StoppageResult one, StoppageResult other) {
        return new StoppageResult(
                one.name(), one.count() + other.count(), one.stoodS() + other.stoodS(), one.waitS() + other.waitS());
    }
}
