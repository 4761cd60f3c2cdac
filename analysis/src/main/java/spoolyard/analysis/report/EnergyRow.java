package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.account.EnergyPart;
import spoolyard.core.account.LineEnergy;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.RunResult;

/**
 * Electric energy that went somewhere in one replication. Immutable.
 *
 * @param station line, or {@link #PLANT}
 * @param use what it went into, or {@link CostRow#TOTAL}
 * @param kwh energy, kWh
 * @param hours how long; not a number where time is not what counts
 * @param count how many heat-ups; not a number for anything else
 * @param kwhPerKgFed energy over mass through the dies of the station, kWh/kg; only for totals
 */
record EnergyRow(String station, String use, double kwh, double hours, double count, double kwhPerKgFed) {
    /** Station of what belongs to no line. */
    static final String PLANT = "plant";

    /**
     * What each line drew, the base load of the plant, and all together.
     *
     * @param setting what was run
     * @param result what the replication told
     * @return rows; none for a plant that does not say what it draws
     */
    static List<EnergyRow> of(Setting setting, RunResult result) {
        return setting.plant()
                .economy()
                .energy()
                .map(use -> rows(EnergyAccount.of(use, result), result))
                .orElse(List.of());
    }

    /**
     * All energy by what it went into.
     *
     * @param setting what was run
     * @param result what the replication told
     * @return rows; none for a plant that does not say what it draws
     */
    static List<EnergyRow> uses(Setting setting, RunResult result) {
        List<EnergyRow> rows = new ArrayList<>();
        setting.plant()
                .economy()
                .energy()
                .map(use -> EnergyAccount.of(use, result))
                .ifPresent(account -> {
                    account.kwh().forEach((part, kwh) -> rows.add(plain(PLANT, part.label(), kwh)));
                    rows.add(total(account, result));
                });
        return rows;
    }

    private static List<EnergyRow> rows(EnergyAccount account, RunResult result) {
        List<EnergyRow> rows = new ArrayList<>();
        for (LineEnergy line : account.lines()) {
            rows.add(plain(line.line(), EnergyPart.MASS.label(), line.massKwh()));
            rows.add(new EnergyRow(
                    line.line(), EnergyPart.HEAT_UP.label(), line.heatUpKwh(), Double.NaN, line.heatUps(), Double.NaN));
            rows.add(timed(line.line(), EnergyPart.STANDBY.label(), line.standbyKwh(), line.standbyH()));
        }
        double hotH = account.anyLineHotH();
        double coldH = Ticks.toHours(result.horizonTicks()) - hotH;
        rows.add(timed(PLANT, EnergyPart.BASE_HOT.label(), account.kwh().get(EnergyPart.BASE_HOT), hotH));
        rows.add(timed(PLANT, EnergyPart.BASE_COLD.label(), account.kwh().get(EnergyPart.BASE_COLD), coldH));
        Optional.ofNullable(account.kwh().get(EnergyPart.GRINDING))
                .ifPresent(kwh -> rows.add(plain(PLANT, EnergyPart.GRINDING.label(), kwh)));
        rows.add(total(account, result));
        return rows;
    }

    private static EnergyRow plain(String station, String use, double kwh) {
        return timed(station, use, kwh, Double.NaN);
    }

    private static EnergyRow timed(String station, String use, double kwh, double hours) {
        return new EnergyRow(station, use, kwh, hours, Double.NaN, Double.NaN);
    }

    private static EnergyRow total(EnergyAccount account, RunResult result) {
        double fedKg = result.lines().stream().mapToDouble(LineResult::fedKg).sum();
        double kwh = account.totalKwh();
        return new EnergyRow(PLANT, CostRow.TOTAL, kwh, Double.NaN, Double.NaN, kwh / fedKg);
    }
}
