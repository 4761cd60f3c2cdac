package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.RunResult;

/** From calendar time at nominal rate down to good spools, by line and for all lines. */
final class LossSheet {
    /** Stands for the sum over the lines. */
    static final String ALL = "all";

    static final Column<OfLine> SPOOLS =
            Column.amount("spools", each -> each.loss().spools());
    static final Column<OfLine> PCT =
            Column.average("pct_of_full_rate", each -> 100 * each.loss().spools() / each.fullSpools());

    static final Sheet<OfLine> SHEET = new Sheet<>(
            "losses",
            List.of("line", "step"),
            LossSheet::losses,
            each -> List.of(each.line(), each.loss().label()),
            List.of(SPOOLS, PCT));

    private LossSheet() {}

    private static List<OfLine> losses(Setting setting, RunResult result) {
        List<OfLine> all = new ArrayList<>();
        Map<String, Double> sums = new LinkedHashMap<>();
        for (LineResult line : result.lines()) {
            List<Loss> losses = Loss.of(setting.plant(), line);
            losses.forEach(loss -> sums.merge(loss.label(), loss.spools(), Double::sum));
            all.addAll(rows(line.line(), losses));
        }
        List<Loss> total = new ArrayList<>();
        sums.forEach((label, spools) -> total.add(new Loss(label, spools)));
        all.addAll(0, rows(ALL, total));
        return all;
    }

    private static List<OfLine> rows(String line, List<Loss> losses) {
        return losses.stream()
                .map(loss -> new OfLine(line, loss, losses.get(0).spools()))
                .toList();
    }

    /** A step of a line. */
    record OfLine(String line, Loss loss, double fullSpools) {}
}
