package spoolyard.analysis.report;

import java.util.List;
import java.util.stream.Stream;
import spoolyard.core.record.QualityResult.ApprovalResult;
import spoolyard.core.record.QualityResult.ExposureResult;
import spoolyard.core.record.QualityResult.LotResult;
import spoolyard.core.record.StationResult;

/** Colour approval, lab and exposure clock: spools held, the tests and rework stations, the lots, and how long spools stood unsealed. */
final class QualitySheets {
    static final Sheet<StationResult> LAB = new Sheet<>(
            "lab",
            List.of("station", "places"),
            (setting, result) -> Stream.concat(result.quality().lab().stream(), result.quality().rework().stream())
                    .toList(),
            station -> List.of(station.station(), String.valueOf(station.servers())),
            List.of(
                    Column.amount("done", StationResult::spools),
                    Column.average("working_pct_of_time", FinishingSheet::workingPercent),
                    Column.amount("mean_wait_min", station -> station.meanWaitS() / 60),
                    Column.amount("longest_wait_min", station -> station.longestWaitS() / 60),
                    Column.amount("mean_waiting", StationResult::meanWaiting),
                    Column.amount("peak_waiting", StationResult::peakWaiting)));

    static final Sheet<LotResult> LOTS = new Sheet<>(
            "lots",
            List.of("polymer"),
            (setting, result) -> result.quality().lots(),
            lot -> List.of(lot.polymer()),
            List.of(
                    Column.amount("lots", LotResult::judged),
                    Column.amount("refused_lots", LotResult::refused),
                    Column.average("refused_pct_of_lots", lot -> 100.0 * lot.refused() / lot.judged()),
                    Column.amount("cut_lots", LotResult::cut),
                    Column.average("spools_each", lot -> lot.spools() / (double) lot.judged()),
                    Column.average("hold_h_each", lot -> lot.holdS() / 3600 / lot.judged()),
                    Column.amount("longest_hold_h", lot -> lot.longestHoldS() / 3600),
                    Column.amount("sampled_spools", LotResult::sampled),
                    Column.amount("defective_sampled_spools", LotResult::defectiveSampled),
                    Column.amount("defective_spools_passed", LotResult::defectivePassed),
                    Column.amount("sorted_spools", LotResult::sorted),
                    Column.amount("respooled_spools", LotResult::respooled),
                    Column.amount("ground_spools", LotResult::ground)),
            setting -> Ranked.by(0, polymers(setting)));

    static final Sheet<ExposureResult> EXPOSURE = new Sheet<>(
            "exposure",
            List.of("polymer", "limit_h"),
            (setting, result) -> result.quality().exposure(),
            each -> List.of(each.polymer(), Figures.cell(each.limitS() / 3600)),
            List.of(
                    Column.amount("spools", ExposureResult::spools),
                    Column.amount("spools_beyond_limit", ExposureResult::beyond),
                    Column.average("beyond_limit_pct_of_spools", each -> 100.0 * each.beyond() / each.spools()),
                    Column.amount("redried_spools", ExposureResult::redried),
                    Column.amount("scrapped_spools", ExposureResult::scrapped),
                    Column.average("mean_exposure_h", each -> each.exposedS() / 3600 / each.spools()),
                    Column.amount("longest_exposure_h", each -> each.longestS() / 3600)));

    static final Sheet<ApprovalResult> COLOUR = new Sheet<>(
            "colour_approval",
            List.of("line"),
            (setting, result) -> result.quality().approvals(),
            each -> List.of(each.line()),
            List.of(
                    Column.amount("judgements", ApprovalResult::judged),
                    Column.amount("refusals", ApprovalResult::refused),
                    Column.amount("held_spools", ApprovalResult::held),
                    Column.amount("released_spools", ApprovalResult::released),
                    Column.amount("scrapped_spools", ApprovalResult::scrapped),
                    Column.average("wait_min_each", each -> each.waitS() / 60 / each.judged()),
                    Column.amount("longest_wait_min", each -> each.longestWaitS() / 60)));

    private QualitySheets() {}

    private static List<String> polymers(Setting setting) {
        return setting.plant().book().orders().stream()
                .map(order -> order.product().polymer().code())
                .distinct()
                .toList();
    }
}
