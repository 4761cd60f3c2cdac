package spoolyard.core.account;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineUse.HotPeriod;
import spoolyard.core.record.RegrindResult;
import spoolyard.core.record.RunResult;

/**
 * The electric energy of one replication. Immutable.
 *
 * @param anyLineHotH time in which at least one line was hot, hours
 * @param kwh by part, every part a key, but grinding only in a plant that grinds; kWh
 * @param lines what each line drew of it, in plant order
 */
public record EnergyAccount(double anyLineHotH, Map<EnergyPart, Double> kwh, List<LineEnergy> lines) {
    /** Copies the collections. */
    public EnergyAccount {
        kwh = Collections.unmodifiableMap(new EnumMap<>(kwh));
        lines = List.copyOf(lines);
    }

    /**
     * Of a run.
     *
     * @param use what the plant draws
     * @param run what happened, with its lines in the order of the plant's
     * @return the account
     */
    public static EnergyAccount of(EnergyUse use, RunResult run) {
        List<LineEnergy> lines = IntStream.range(0, run.lines().size())
                .mapToObj(i -> LineEnergy.of(
                        run.lines().get(i), use.kwhPerKg(), use.lines().get(i)))
                .toList();
        double hotH = Ticks.toHours(anyHotTicks(run.lines()));
        Map<EnergyPart, Double> kwh = new EnumMap<>(EnergyPart.class);
        kwh.put(EnergyPart.BASE_HOT, use.baseHotKw() * hotH);
        kwh.put(EnergyPart.BASE_COLD, use.baseColdKw() * (Ticks.toHours(run.horizonTicks()) - hotH));
        kwh.put(EnergyPart.MASS, lines.stream().mapToDouble(LineEnergy::massKwh).sum());
        kwh.put(
                EnergyPart.HEAT_UP,
                lines.stream().mapToDouble(LineEnergy::heatUpKwh).sum());
        kwh.put(
                EnergyPart.STANDBY,
                lines.stream().mapToDouble(LineEnergy::standbyKwh).sum());
        if (!run.regrind().isEmpty()) {
            double groundKg =
                    run.regrind().stream().mapToDouble(RegrindResult::groundKg).sum();
            kwh.put(EnergyPart.GRINDING, use.kwhPerKgGround() * groundKg);
        }
        return new EnergyAccount(hotH, kwh, lines);
    }

    /** Length of the union of all hot periods of all lines. */
    private static long anyHotTicks(List<LineResult> lines) {
        List<HotPeriod> periods = lines.stream()
                .flatMap(line -> line.use().hot().stream())
                .sorted(Comparator.comparingLong(HotPeriod::startTick))
                .toList();
        long ticks = 0;
        long countedTo = Long.MIN_VALUE;
        for (HotPeriod period : periods) {
            ticks += Math.max(0, period.endTick() - Math.max(period.startTick(), countedTo));
            countedTo = Math.max(countedTo, period.endTick());
        }
        return ticks;
    }

    /**
     * All parts together.
     *
     * @return kWh
     */
    public double totalKwh() {
        return kwh.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
