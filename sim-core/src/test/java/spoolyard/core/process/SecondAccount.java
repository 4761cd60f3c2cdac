package spoolyard.core.process;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import spoolyard.core.account.CostAccount;
import spoolyard.core.account.CostPart;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.account.EnergyPart;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;
import spoolyard.core.plant.Shift;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineUse;
import spoolyard.core.record.LineUse.HotPeriod;
import spoolyard.core.record.LineUse.MaterialUse;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;
import spoolyard.core.record.StockResult;

/** Energy and money of a run found a second way, from its counters, its calendar and fixed prices alone. */
final class SecondAccount {
    static final Prices PRICES = new Prices(
            "EUR",
            map("PLA", 2.25, "PETG", 1.875),
            new Prices.Concentrate(10, map("WHT", 6.5)),
            7.5,
            new Prices.Credit(0.25, 0.125, 3),
            1,
            map("operator", 28.0, "fitter", 34.0),
            0.15625,
            Optional.of(map("PLA", 6.0, "PETG", 7.0)));

    private final Plant plant;
    private final RunResult run;
    private final List<String> broken = new ArrayList<>();

    private SecondAccount(Plant plant, RunResult run) {
        this.plant = plant;
        this.run = run;
    }

    private static Map<String, Double> map(Object... keysAndValues) {
        Map<String, Double> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put((String) keysAndValues[i], (Double) keysAndValues[i + 1]);
        }
        return map;
    }

    static EnergyUse energy(Plant plant) {
        return new EnergyUse(
                55,
                20,
                0.5625,
                0.125,
                plant.lines().stream()
                        .map(line -> new EnergyUse.LineEnergy(18, 3.5))
                        .toList());
    }

    /** What the account of energy and money says other than the second account. */
    static List<String> findings(Plant plant, RunResult run) {
        EnergyAccount energy = EnergyAccount.of(energy(plant), run);
        return findings(plant, run, energy, CostAccount.of(PRICES, Optional.of(energy), run));
    }

    /** The same of given accounts. */
    static List<String> findings(Plant plant, RunResult run, EnergyAccount energy, CostAccount cost) {
        SecondAccount second = new SecondAccount(plant, run);
        second.compare(energy, cost);
        return second.broken;
    }

    private void compare(EnergyAccount energy, CostAccount cost) {
        BigDecimal kwh = kwh();
        compare("energy", energy.totalKwh(), kwh.doubleValue());
        boolean grinds = !run.regrind().isEmpty();
        if (energy.kwh().containsKey(EnergyPart.GRINDING) != grinds
                || energy.kwh().size() != EnergyPart.values().length - (grinds ? 0 : 1)) {
            broken.add("parts of energy: " + energy.kwh().keySet());
        }
        compare("money", cost.total(), money(kwh));
        if (!List.copyOf(cost.byPart().keySet()).equals(List.of(CostPart.values()))) {
            broken.add("parts of cost: " + cost.byPart().keySet());
        }
        compare(
                "parts of cost",
                cost.byPart().values().stream().mapToDouble(x -> x).sum(),
                cost.total());
    }

    private void compare(String what, double said, double found) {
        if (!(Math.abs(said - found) <= 1e-9 * (1 + Math.abs(found)))) {
            broken.add(what + ": " + said + " but " + found);
        }
    }

    /** Sweeps over all beginnings and ends of heat, counting the lines that are hot. */
    static long hotTicksOneByOne(List<LineResult> lines) {
        TreeMap<Long, Integer> changes = new TreeMap<>();
        for (LineResult line : lines) {
            for (HotPeriod period : line.use().hot()) {
                changes.merge(period.startTick(), 1, Integer::sum);
                changes.merge(period.endTick(), -1, Integer::sum);
            }
        }
        long ticks = 0;
        int hot = 0;
        long since = 0;
        for (Map.Entry<Long, Integer> change : changes.entrySet()) {
            ticks += hot > 0 ? change.getKey() - since : 0;
            since = change.getKey();
            hot += change.getValue();
        }
        return ticks;
    }

    private BigDecimal kwh() {
        BigDecimal hotH = big(Ticks.toHours(hotTicksOneByOne(run.lines())));
        BigDecimal kwh = big(55).multiply(hotH)
                .add(big(20).multiply(big(Ticks.toHours(run.horizonTicks())).subtract(hotH)));
        for (LineResult line : run.lines()) {
            kwh = kwh.add(big(0.5625).multiply(big(line.fedKg()))).add(heaters(line.use()));
        }
        return kwh.add(big(0.125).multiply(big(groundKg())));
    }

    /** From the stock alone: what came into it is ground scrap less its dust. */
    private double groundKg() {
        double dust = plant.materials()
                .regrind()
                .map(regrind -> regrind.grinding().dust())
                .orElse(0.0);
        return regrind().mapToDouble(StockResult::received).sum() / (1 - dust);
    }

    private Stream<StockResult> regrind() {
        return run.stocks().stream().filter(stock -> stock.kind().equals("regrind"));
    }

    private static BigDecimal heaters(LineUse use) {
        return use.heaters()
                .map(drawn -> big(drawn.heatUpKwh()).add(big(drawn.standbyKwh())))
                .orElse(big(18).multiply(big(use.heatUps())).add(big(3.5).multiply(big(use.standbyS() / 3600))));
    }

    private double money(BigDecimal kwh) {
        BigDecimal sum = kwh.multiply(big(0.15625)).add(big(run.flow().packed()));
        for (StockResult regrind : regrind().toList()) {
            sum = sum.subtract(big(regrind.used()).multiply(big(regrind.name().equals("PLA") ? 2.25 : 1.875)));
        }
        sum = sum.add(big(groundKg()).multiply(big(0.25)));
        for (LineResult line : run.lines()) {
            for (MaterialUse use : line.use().materials()) {
                double resin =
                        use.polymer().equals("PLA") ? 2.25 : use.polymer().equals("PETG") ? 1.875 : 0;
                double concentrate =
                        use.colour().equals("WHT") ? 0.04 * 6.5 : use.colour().equals("BLK") ? 0.03 * 10 : 0;
                double pure = use.colour().equals("WHT") ? 0.96 : use.colour().equals("BLK") ? 0.97 : 1;
                sum = sum.add(
                        big(use.fedKg()).multiply(big(pure).multiply(big(resin)).add(big(concentrate))));
            }
            BigDecimal mixedKg = big(line.scrapKg().get(ScrapCause.POLYMER_PURGE));
            sum = sum.subtract(big(line.gauge().bGradeKg()).multiply(big(3)));
            sum = sum.add(big(line.use().compoundKg()).multiply(big(7.5)))
                    .subtract(big(line.totalScrapKg()).subtract(mixedKg).multiply(big(0.25)))
                    .subtract(mixedKg.multiply(big(0.125)));
        }
        return sum.add(big(pay())).doubleValue();
    }

    /** From the calendar alone: heads times hours in the run times rate, the hand-over before the shift on top. */
    private double pay() {
        double sum = 0;
        for (Shift shift : plant.shifts()) {
            long from = Math.max(0, shift.startTick());
            long to = Math.min(plant.horizonTicks(), shift.endTick());
            boolean briefed = shift.handOverOverlaps() && shift.startTick() >= 0;
            double hours = to > from ? Ticks.toHours(to - from + (briefed ? shift.handOverTicks() : 0)) : 0;
            // operators come first, then fitters where there are any
            double perH = 28 * shift.heads().get(0);
            perH += shift.heads().size() > 1 ? 34 * shift.heads().get(1) : 0;
            sum += hours * perH * shift.payFactor();
        }
        return sum;
    }

    private static BigDecimal big(double value) {
        return BigDecimal.valueOf(value);
    }
}
