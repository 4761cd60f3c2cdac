package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import spoolyard.core.account.LostContribution;
import spoolyard.core.record.RunResult;

/**
 * What lost output would have brought in one replication. Immutable.
 *
 * @param polymer polymer code, or {@link CostRow#TOTAL}
 * @param kg lost output, kg
 * @param noOrderKg of this, in time without an order, kg
 * @param contribution what the lost output would have brought
 * @param noOrderContribution of this, in time without an order
 */
record LostRow(String polymer, double kg, double noOrderKg, double contribution, double noOrderContribution) {
    /**
     * One for each polymer, then their sum.
     *
     * @param setting what was run
     * @param result what the replication told
     * @return rows; none for a plant that does not say what a kilogram brings
     */
    static List<LostRow> of(Setting setting, RunResult result) {
        return setting.plant()
                .economy()
                .prices()
                .flatMap(prices -> prices.contributionPerKg())
                .map(perKg ->
                        withTotal(LostContribution.of(perKg, setting.plant().book(), result)))
                .orElse(List.of());
    }

    private static List<LostRow> withTotal(List<LostContribution> lost) {
        List<LostRow> rows = new ArrayList<>();
        lost.forEach(each -> rows.add(
                new LostRow(each.polymer(), each.lostKg(), each.noOrderKg(), each.amount(), each.noOrderAmount())));
        rows.add(new LostRow(
                CostRow.TOTAL,
                sum(rows, LostRow::kg),
                sum(rows, LostRow::noOrderKg),
                sum(rows, LostRow::contribution),
                sum(rows, LostRow::noOrderContribution)));
        return List.copyOf(rows);
    }

    private static double sum(List<LostRow> rows, ToDoubleFunction<LostRow> value) {
        return rows.stream().mapToDouble(value).sum();
    }
}
