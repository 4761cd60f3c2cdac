package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.LineUse.MaterialUse;
import spoolyard.core.record.RegrindResult;
import spoolyard.core.record.RunResult;

/**
 * Regrind of one polymer in one replication. Immutable. Masses in kg.
 *
 * @param polymer polymer code, or {@link CostRow#TOTAL}
 * @param broughtKg clean scrap brought to be ground
 * @param groundKg of this, ground
 * @param dustKg of this, lost
 * @param noRoomKg not ground for want of room, and sold
 * @param heldKg not yet a batch at the end
 * @param takenKg regrind taken in place of resin
 * @param naturalKg resin and regrind fed in the polymer
 * @param saved price of the resin that it was taken for; not a number without prices
 * @param forgone credit that the scrap would have brought; likewise
 */
record RegrindRow(
        String polymer,
        double broughtKg,
        double groundKg,
        double dustKg,
        double noRoomKg,
        double heldKg,
        double takenKg,
        double naturalKg,
        double saved,
        double forgone) {
    /**
     * One for each polymer that is ground, then their sum.
     *
     * @param setting what was run
     * @param result what the replication told
     * @return rows; none for a plant that sells its scrap
     */
    static List<RegrindRow> of(Setting setting, RunResult result) {
        Optional<Prices> prices = setting.plant().economy().prices();
        List<RegrindRow> rows = new ArrayList<>();
        result.regrind().forEach(each -> rows.add(row(each, prices, result)));
        if (!rows.isEmpty()) {
            rows.add(total(List.copyOf(rows)));
        }
        return rows;
    }

    private static RegrindRow row(RegrindResult regrind, Optional<Prices> prices, RunResult result) {
        double naturalKg = result.lines().stream()
                .flatMap(line -> line.use().materials().stream())
                .filter(use -> use.polymer().equals(regrind.polymer()))
                .mapToDouble(RegrindRow::naturalKg)
                .sum();
        return new RegrindRow(
                regrind.polymer(),
                regrind.broughtKg(),
                regrind.groundKg(),
                regrind.dustKg(),
                regrind.noRoomKg(),
                regrind.heldKg(),
                regrind.takenKg(),
                naturalKg,
                prices.map(all -> all.polymerPerKg().get(regrind.polymer()) * regrind.takenKg())
                        .orElse(Double.NaN),
                prices.map(all -> all.credit().cleanPerKg() * regrind.groundKg())
                        .orElse(Double.NaN));
    }

    private static double naturalKg(MaterialUse use) {
        return use.fedKg() * (1 - use.concentrateShare());
    }

    private static RegrindRow total(List<RegrindRow> rows) {
        return new RegrindRow(
                CostRow.TOTAL,
                sum(rows, RegrindRow::broughtKg),
                sum(rows, RegrindRow::groundKg),
                sum(rows, RegrindRow::dustKg),
                sum(rows, RegrindRow::noRoomKg),
                sum(rows, RegrindRow::heldKg),
                sum(rows, RegrindRow::takenKg),
                sum(rows, RegrindRow::naturalKg),
                sum(rows, RegrindRow::saved),
                sum(rows, RegrindRow::forgone));
    }

    private static double sum(List<RegrindRow> rows, ToDoubleFunction<RegrindRow> value) {
        return rows.stream().mapToDouble(value).sum();
    }

    /**
     * How much of the natural part of all that was fed in the polymer was regrind.
     *
     * @return per cent; not a number if nothing was fed
     */
    double takenPct() {
        return 100 * takenKg / naturalKg;
    }
}
