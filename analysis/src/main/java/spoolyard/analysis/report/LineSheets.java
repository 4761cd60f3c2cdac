package spoolyard.analysis.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineResult.StoppageResult;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/** The lines: output and effectiveness, scrap by cause, stoppages. */
final class LineSheets {
    static final Column<OfLine> SPOOLS_PER_SHIFT = Column.average("good_spools_per_shift", OfLine::spoolsPerShift);
    static final Column<OfLine> SCRAP_PCT = Column.average(
            "scrap_pct_of_fed",
            line -> 100 * line.result().totalScrapKg() / line.result().fedKg());
    static final Column<OfLine> OEE =
            Column.average("oee_pct", line -> 100 * line.oee().index());
    static final Column<OfLine> AVAILABILITY =
            Column.average("availability_pct", line -> 100 * line.oee().availability());
    static final Column<OfLine> EFFECTIVENESS =
            Column.average("effectiveness_pct", line -> 100 * line.oee().effectiveness());
    static final Column<OfLine> QUALITY =
            Column.average("quality_pct", line -> 100 * line.oee().qualityRatio());
    static final Column<OfLine> OVERFLOW = Column.average(
            "overflow_pct_of_swaps",
            line -> 100 * overflows(line.result()) / line.result().swaps());

    static final Sheet<OfLine> LINES = new Sheet<>(
            "lines",
            List.of("line"),
            LineSheets::lines,
            line -> List.of(line.result().line()),
            List.of(
                    SPOOLS_PER_SHIFT,
                    amount("good_spools", LineResult::goodSpools),
                    amount("rejected_spools", LineResult::rejectedSpools),
                    amount("good_kg", LineResult::goodKg),
                    amount("fed_kg", LineResult::fedKg),
                    amount("in_process_kg", LineResult::inProcessKg),
                    amount("scrap_kg", LineResult::totalScrapKg),
                    SCRAP_PCT,
                    OEE,
                    AVAILABILITY,
                    EFFECTIVENESS,
                    QUALITY,
                    Column.amount("planned_busy_h", line -> line.oee().plannedBusyS() / 3600),
                    Column.amount("production_h", line -> line.oee().productionS() / 3600),
                    amount("spool_swaps", LineResult::swaps),
                    OVERFLOW,
                    overflow("no_crew", OverflowCause.NO_CREW),
                    overflow("swap_too_slow", OverflowCause.SWAP_TOO_SLOW),
                    overflow("rack_full", OverflowCause.RACK_FULL),
                    overflow("level_carried_over", OverflowCause.CARRIED_OVER),
                    amount("overflow_m", LineSheets::overflowM),
                    amount("slowed_loss_kg", LineResult::slowedLossKg),
                    amount("blocked_strand_h", line -> line.blockedS() / 3600),
                    amount("peak_accumulator_m", LineResult::peakLevelM),
                    amount("mean_swap_wait_s", LineResult::meanSwapWaitS),
                    amount("longest_swap_wait_s", LineResult::longestSwapWaitS),
                    amount("excursions", line -> line.gauge().excursions()),
                    amount("out_of_tolerance_strand_h", line -> line.gauge().outS() / 3600),
                    amount("spools_cut_short", line -> line.gauge().cutSpools()),
                    amount("b_grade_spools", line -> line.gauge().bGradeSpools()),
                    amount("b_grade_kg", line -> line.gauge().bGradeKg()),
                    amount("flagged_spools", line -> line.gauge().flaggedSpools()),
                    amount("flagged_spools_rejected", line -> line.gauge().flaggedRejectedSpools())));

    static final Sheet<OfCause> SCRAP = new Sheet<>(
            "scrap",
            List.of("line", "cause"),
            LineSheets::scrap,
            each -> List.of(each.line().line(), each.cause().label()),
            List.of(
                    Column.amount("scrap_kg", OfCause::kg),
                    Column.average(
                            "pct_of_fed", each -> 100 * each.kg() / each.line().fedKg())));

    static final Column<OfPlant> CAUSE_PCT = Column.average("pct_of_fed", each -> 100 * each.kg() / each.fedKg());
    static final Sheet<OfPlant> SCRAP_CAUSES = new Sheet<>(
            "scrap_causes",
            List.of("cause"),
            LineSheets::scrapOfPlant,
            each -> List.of(each.cause().label()),
            List.of(Column.amount("scrap_kg", OfPlant::kg), CAUSE_PCT));

    static final Sheet<OfStoppage> STOPPAGES = new Sheet<>(
            "stoppages",
            List.of("line", "stoppage"),
            LineSheets::stoppages,
            each -> List.of(each.line(), each.stoppage().name()),
            List.of(
                    Column.amount("count", each -> each.stoppage().count()),
                    Column.amount("stood_h", each -> each.stoppage().stoodS() / 3600),
                    Column.amount("waited_for_crew_h", each -> each.stoppage().waitS() / 3600)));

    private LineSheets() {}

    static double overflows(LineResult line) {
        return line.overflows().values().stream().mapToLong(Long::longValue).sum();
    }

    static double overflowM(LineResult line) {
        return line.overflowM().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    private static Column<OfLine> amount(String name, ToDoubleFunction<LineResult> value) {
        return Column.amount(name, line -> value.applyAsDouble(line.result()));
    }

    private static Column<OfLine> overflow(String name, OverflowCause cause) {
        return Column.average(
                "overflow_" + name + "_pct_of_swaps",
                line -> 100.0
                        * line.result().overflows().get(cause)
                        / line.result().swaps());
    }

    private static List<OfLine> lines(Setting setting, RunResult result) {
        return IntStream.range(0, result.lines().size())
                .mapToObj(i -> new OfLine(
                        result.lines().get(i),
                        Oee.of(result.lines().get(i)),
                        FullShifts.mean(setting.plant(), result, shift -> shift.goodSpools()
                                .get(i))))
                .toList();
    }

    private static List<OfCause> scrap(Setting setting, RunResult result) {
        return result.lines().stream()
                .flatMap(line -> Stream.of(ScrapCause.values()).map(cause -> new OfCause(line, cause)))
                .toList();
    }

    private static List<OfPlant> scrapOfPlant(Setting setting, RunResult result) {
        double fedKg = result.lines().stream().mapToDouble(LineResult::fedKg).sum();
        return Stream.of(ScrapCause.values())
                .map(cause -> new OfPlant(
                        cause,
                        result.lines().stream()
                                .mapToDouble(line -> line.scrapKg().get(cause))
                                .sum(),
                        fedKg))
                .toList();
    }

    private static List<OfStoppage> stoppages(Setting setting, RunResult result) {
        return result.lines().stream()
                .flatMap(line -> line.stoppages().stream().map(each -> new OfStoppage(line.line(), each)))
                .toList();
    }

    /** A line. */
    record OfLine(LineResult result, Oee oee, double spoolsPerShift) {}

    /** A cause of scrap on a line. */
    record OfCause(LineResult line, ScrapCause cause) {
        double kg() {
            return line.scrapKg().get(cause);
        }
    }

    /** A cause of scrap over all lines. */
    record OfPlant(ScrapCause cause, double kg, double fedKg) {}

    /** A cause of stoppage on a line. */
    record OfStoppage(String line, StoppageResult stoppage) {}
}
