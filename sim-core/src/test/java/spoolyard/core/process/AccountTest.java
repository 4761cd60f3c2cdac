package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.account.CostAccount;
import spoolyard.core.account.CostPart;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.account.EnergyPart;
import spoolyard.core.account.LostContribution;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.Prices;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.Window;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;

/** Hand-worked money and energy of a line of 18 kg/h (0.005 kg/s, 1 kg in 200 s). White is 4 % concentrate. */
class AccountTest {
    private static final double EXACT = 1e-6;

    private static Prices prices() {
        return new Prices(
                "EUR",
                Map.of("PLA", 2.0),
                new Prices.Concentrate(10, Map.of("BLK", 5.0)),
                7.5,
                new Prices.Credit(0.25, 0.1, 1.5),
                0.5,
                Map.of("operator", 30.0),
                0.16,
                Optional.of(Map.of("PLA", 6.0)));
    }

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static Map<CostPart, Double> cost(RunResult run) {
        return CostAccount.of(prices(), Optional.empty(), run).byPart();
    }

    private static Shift shift(double fromS, double toS, int heads, double handOverS, boolean overlaps, double pay) {
        return new Shift(
                "S " + fromS,
                PlantSketch.ticks(fromS),
                PlantSketch.ticks(toS),
                List.of(heads),
                List.of(),
                PlantSketch.ticks(handOverS),
                overlaps,
                1,
                pay);
    }

    /**
     * Two by day, 3600 s with a hand-over in it: 2 h. One by night from 3600 to 10 800 s at half as much again, who comes 600 s
     * earlier: 7800 s x 1.5 = 3.25 h. Three on Sunday from 14 400 s, at twice the pay, of whose 7200 s the run holds 3600 and
     * their 1200 s before: 3 x 4800 s x 2 = 8 h.
     */
    @Test
    void paysEachShiftItsHoursAtItsOwnPay() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.hours = 5;
        sketch.shifts.add(shift(0, 3600, 2, 900, false, 1));
        sketch.shifts.add(shift(3600, 10_800, 1, 600, true, 1.5));
        sketch.shifts.add(shift(14_400, 21_600, 3, 1200, true, 2));

        RunResult run = run(sketch);

        assertThat(run.crew().stream().mapToDouble(crew -> crew.paidS()).sum())
                .isCloseTo(2 * 3600 + 7800 + 3 * 4800, within(EXACT));
        assertThat(cost(run).get(CostPart.LABOUR)).isCloseTo((2 + 3.25 + 8) * 30, within(EXACT));
    }

    /**
     * In one hour 17 spools come off; 6 of them saw one of the excursions that begin every 510 s, as in {@link ExcursionTest}.
     * Fed are 18 kg.
     */
    @Test
    void secondQualityBringsItsOwnPrice() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.hours = 1;
        sketch.gauge = Optional.of(new Gauge(
                List.of(Gauge.Excursions.ofAll(new Law.Fixed(500), new Law.Fixed(10))),
                new Gauge.Policy.BGrade(),
                Optional.empty()));

        RunResult run = run(sketch);

        assertThat(cost(run).get(CostPart.CREDIT)).isCloseTo(-6 * 1.5, within(EXACT));
        assertThat(cost(run).get(CostPart.RESIN)).isCloseTo(18 * 0.96 * 2, within(EXACT));
        assertThat(cost(run).get(CostPart.CONCENTRATE)).isCloseTo(18 * 0.04 * 10, within(EXACT));
        // the eleventh good spool is off at 3450 s and packed at once
        assertThat(cost(run).get(CostPart.PACK_OUT)).isCloseTo(11 * 0.5, within(EXACT));
    }

    /** Spools of half a kilogram, one in 100 s: 35 are off by 3550 s, 17.5 of 18 kg. */
    @Test
    void losesTheContributionOfKilogramsNotOfSpools() {
        Product half = new Product(PlantSketch.PLA, PlantSketch.WHITE, 1.75, 0.5);
        PlantSketch sketch = new PlantSketch().order("SO-1", half, 1000);
        sketch.hours = 1;
        OrderBook book = sketch.plant().book();

        List<LostContribution> lost =
                LostContribution.of(prices().contributionPerKg().orElseThrow(), book, run(sketch));

        assertThat(lost.get(0).lostKg()).isCloseTo(0.5, within(EXACT));
        assertThat(lost.get(0).amount()).isCloseTo(3, within(EXACT));
        assertThat(lost.get(0).noOrderAmount()).isZero();
    }

    /**
     * Two lines heat for 600 s, soak for 300 s and make 15 spools of 1 kg, to 3900 s. They stand hot without an order to 5400
     * s, and are cold from then to 3 h. Each is hot for 1.5 h, both at the same time, and stands hot for 300 + 1500 s.
     */
    @Test
    void linesThatAreHotTogetherShareTheBaseLoad() {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = 3;
        sketch.lineCount = 2;
        sketch.heads = List.of(2);
        sketch.runningAtStart = false;
        sketch.startStop = new StartStop(
                new HeatUp.Timed(new Law.Fixed(600)),
                new Law.Fixed(300),
                Law.ZERO,
                Law.ZERO,
                0,
                Law.ZERO,
                0,
                EndOfPeriod.SHUT_DOWN,
                0,
                CrewNeed.NOBODY);
        sketch.periods.add(new Window("one", 0, PlantSketch.ticks(5400)));
        sketch.orderFor("L1", "SO-1", PlantSketch.WHITE_PLA, 15).orderFor("L2", "SO-2", PlantSketch.WHITE_PLA, 15);
        EnergyUse.LineEnergy line = new EnergyUse.LineEnergy(18, 4);
        EnergyUse use = new EnergyUse(50, 20, 0.5, 0, List.of(line, line));

        EnergyAccount energy = EnergyAccount.of(use, run(sketch));

        assertThat(energy.anyLineHotH()).isCloseTo(1.5, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.BASE_HOT)).isCloseTo(75, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.BASE_COLD)).isCloseTo(30, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.MASS)).isCloseTo(0.5 * 2 * 15, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.HEAT_UP)).isCloseTo(2 * 18, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.STANDBY)).isCloseTo(2 * 4 * 0.5, within(EXACT));
        assertThat(energy.lines().get(1).hotH()).isCloseTo(1.5, within(EXACT));
    }
}
