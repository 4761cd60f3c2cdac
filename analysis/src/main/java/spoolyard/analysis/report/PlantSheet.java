package spoolyard.analysis.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.QualityResult.ExposureResult;
import spoolyard.core.record.QualityResult.LossResult;
import spoolyard.core.record.QualityResult.LotResult;
import spoolyard.core.record.RunResult;

/** The plant as a whole, in one row. */
final class PlantSheet {
    /** Texts of its only row. */
    static final List<String> ROW = List.of();

    static final Column<Whole> SPOOLS_PER_SHIFT = Column.average(
            "good_spools_per_shift",
            whole -> FullShifts.mean(whole.plant(), whole.result(), RunResult.ShiftResult::totalGoodSpools));
    static final Column<Whole> SPOOLS = Column.amount("good_spools", sum(LineResult::goodSpools));
    static final Column<Whole> GOOD_KG = Column.amount("good_kg", sum(LineResult::goodKg));
    static final Column<Whole> FED_KG = Column.amount("fed_kg", Whole::fedKg);
    static final Column<Whole> SCRAP_KG = Column.amount("scrap_kg", sum(LineResult::totalScrapKg));
    static final Column<Whole> SCRAP_PCT =
            Column.average("scrap_pct_of_fed", whole -> whole.percentOfFed(LineResult::totalScrapKg));
    static final Column<Whole> EXCURSIONS =
            Column.amount("excursions", sum(line -> line.gauge().excursions()));
    static final Column<Whole> CUT_SHORT =
            Column.amount("spools_cut_short", sum(line -> line.gauge().cutSpools()));
    static final Column<Whole> B_GRADE =
            Column.amount("b_grade_spools", sum(line -> line.gauge().bGradeSpools()));
    static final Column<Whole> B_GRADE_KG =
            Column.amount("b_grade_kg", sum(line -> line.gauge().bGradeKg()));
    static final Column<Whole> FLAGGED =
            Column.amount("flagged_spools", sum(line -> line.gauge().flaggedSpools()));
    static final Column<Whole> OEE =
            Column.average("oee_pct", whole -> 100 * whole.oee().index());
    static final Column<Whole> AVAILABILITY =
            Column.average("availability_pct", whole -> 100 * whole.oee().availability());
    static final Column<Whole> EFFECTIVENESS =
            Column.average("effectiveness_pct", whole -> 100 * whole.oee().effectiveness());
    static final Column<Whole> QUALITY =
            Column.average("quality_pct", whole -> 100 * whole.oee().qualityRatio());
    static final List<Column<Whole>> LOSSES =
            StateGroup.LOSSES.stream().map(PlantSheet::loss).toList();
    static final Column<Whole> SWAPS = Column.amount("spool_swaps", sum(LineResult::swaps));
    static final Column<Whole> OVERFLOW =
            Column.average("overflow_pct_of_swaps", whole -> whole.percentOfSwaps(LineSheets::overflows));
    static final Column<Whole> NO_CREW = overflow("no_crew", OverflowCause.NO_CREW);
    static final Column<Whole> TOO_SLOW = overflow("swap_too_slow", OverflowCause.SWAP_TOO_SLOW);
    static final Column<Whole> RACK_FULL = overflow("rack_full", OverflowCause.RACK_FULL);
    static final Column<Whole> CARRIED_OVER = overflow("level_carried_over", OverflowCause.CARRIED_OVER);
    static final Column<Whole> OVERFLOW_M = Column.amount("overflow_m", sum(LineSheets::overflowM));
    static final Column<Whole> LATE = Column.amount("orders_late", whole -> Promise.lateOrders(whole.promises()));
    static final Column<Whole> LATE_SPOOL_DAYS =
            Column.amount("late_spool_days", whole -> Promise.lateSpoolDays(whole.promises()));
    static final Column<Whole> ON_TIME =
            Column.average("on_time_pct_of_decided_orders", whole -> Promise.onTimePercent(whole.promises()));
    static final Column<Whole> ORDERS_PACKED =
            Column.amount("orders_packed", whole -> Promise.packedOrders(whole.promises()));
    static final Column<Whole> PACKED =
            Column.amount("packed_spools", whole -> whole.result().flow().packed());
    static final Column<Whole> WAITING = Column.amount(
            "unpacked_spools_at_end",
            whole -> whole.result().flow().waiting() + whole.result().flow().inWork());
    static final Column<Whole> SURPLUS =
            Column.amount("surplus_spools", whole -> whole.result().flow().surplus());
    static final Column<Whole> INBOUND = Column.amount(
            "inbound_spools_accepted", whole -> whole.result().flow().accepted());
    static final Column<Whole> TURNED_AWAY =
            Column.amount("inbound_spools_turned_away", whole -> whole.result().inbound().stream()
                    .mapToDouble(RunResult.InboundResult::turnedAway)
                    .sum());
    static final Column<Whole> LOTS = Column.amount("lots_judged", whole -> whole.lots(LotResult::judged));
    static final Column<Whole> REFUSED = Column.amount("lots_refused", whole -> whole.lots(LotResult::refused));
    static final Column<Whole> HOLD = Column.average(
            "mean_lot_hold_h", whole -> whole.lots(LotResult::holdS) / 3600 / whole.lots(LotResult::judged));
    static final Column<Whole> PASSED_DEFECTIVE =
            Column.amount("defective_spools_passed", whole -> whole.lots(LotResult::defectivePassed));
    static final Column<Whole> BEYOND = Column.average(
            "beyond_exposure_limit_pct_of_limited_spools",
            whole -> 100 * whole.exposure(ExposureResult::beyond) / whole.exposure(ExposureResult::spools));
    static final Column<Whole> REDRIED =
            Column.amount("redried_spools", whole -> whole.exposure(ExposureResult::redried));
    static final Column<Whole> LOST =
            Column.amount("spools_lost_behind_lines", whole -> whole.result().quality().losses().stream()
                    .mapToDouble(LossResult::spools)
                    .sum());
    static final Column<Whole> SHORT = Column.amount("short_delivered_spools", whole -> whole.result().orders().stream()
            .mapToDouble(RunResult.OrderResult::shortSpools)
            .sum());
    static final Column<Whole> STOOD_FOR_STORE =
            Column.amount("lines_stood_for_store_h", whole -> StockSheet.lineWaitH(whole.result()));
    static final Column<Whole> CARTONS =
            Column.amount("cartons", whole -> whole.result().flow().cartons());
    static final Column<Whole> PALLETS =
            Column.amount("pallets", whole -> whole.result().flow().pallets());
    static final Column<Whole> TO_PACKED = Column.average(
            "mean_winder_to_packed_h",
            whole -> whole.result().flow().packed() == 0
                    ? Double.NaN
                    : whole.result().flow().meanInSystemS() / 3600);
    static final Column<Whole> IN_SYSTEM = Column.average(
            "mean_spools_winder_to_packed", whole -> whole.result().flow().meanSpoolsInSystem());

    static final Sheet<Whole> SHEET = new Sheet<>(
            "plant",
            List.of(),
            (setting, result) -> List.of(Whole.of(setting, result)),
            whole -> ROW,
            Stream.of(
                            List.of(SPOOLS_PER_SHIFT, SPOOLS, GOOD_KG, FED_KG, SCRAP_KG, SCRAP_PCT),
                            List.of(EXCURSIONS, CUT_SHORT, B_GRADE, B_GRADE_KG, FLAGGED),
                            List.of(OEE, AVAILABILITY, EFFECTIVENESS, QUALITY),
                            LOSSES,
                            List.of(SWAPS, OVERFLOW, NO_CREW, TOO_SLOW, RACK_FULL, CARRIED_OVER, OVERFLOW_M),
                            List.of(LATE, LATE_SPOOL_DAYS, ON_TIME, ORDERS_PACKED, PACKED, WAITING, SURPLUS),
                            List.of(LOTS, REFUSED, HOLD, PASSED_DEFECTIVE, BEYOND, REDRIED, LOST, SHORT),
                            List.of(INBOUND, TURNED_AWAY, STOOD_FOR_STORE, CARTONS, PALLETS, TO_PACKED, IN_SYSTEM))
                    .flatMap(List::stream)
                    .toList());

    private PlantSheet() {}

    private static ToDoubleFunction<Whole> sum(ToDoubleFunction<LineResult> value) {
        return whole -> whole.sumOf(value);
    }

    private static Column<Whole> loss(StateGroup group) {
        String name = group.label().replace(' ', '_') + "_pct_of_planned_busy_time";
        return Column.average(
                name,
                whole -> 100
                        * whole.sumOf(line -> secondsIn(line, group))
                        / whole.oee().plannedBusyS());
    }

    private static double secondsIn(LineResult line, StateGroup group) {
        return group.states().stream()
                .mapToDouble(state -> line.stateS().get(state))
                .sum();
    }

    private static Column<Whole> overflow(String name, OverflowCause cause) {
        return Column.average(
                "overflow_" + name + "_pct_of_swaps",
                whole -> whole.percentOfSwaps(line -> line.overflows().get(cause)));
    }

    /** The plant in one replication. */
    record Whole(Plant plant, RunResult result, Oee oee, List<Promise> promises, double fedKg) {
        static Whole of(Setting setting, RunResult result) {
            return new Whole(
                    setting.plant(),
                    result,
                    Oee.sumOf(result.lines().stream().map(Oee::of).toList()),
                    Promise.all(setting.plant(), result),
                    result.lines().stream().mapToDouble(LineResult::fedKg).sum());
        }

        double sumOf(ToDoubleFunction<LineResult> value) {
            return result.lines().stream().mapToDouble(value).sum();
        }

        double lots(ToDoubleFunction<LotResult> value) {
            return result.quality().lots().stream().mapToDouble(value).sum();
        }

        double exposure(ToDoubleFunction<ExposureResult> value) {
            return result.quality().exposure().stream().mapToDouble(value).sum();
        }

        double percentOfFed(ToDoubleFunction<LineResult> kg) {
            return 100 * sumOf(kg) / fedKg;
        }

        double percentOfSwaps(ToDoubleFunction<LineResult> count) {
            return 100 * sumOf(count) / sumOf(LineResult::swaps);
        }
    }
}
