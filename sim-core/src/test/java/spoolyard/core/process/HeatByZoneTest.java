package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.account.LineEnergy;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.HeatZone;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.MaterialSupply.Layout;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.Window;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.LineUse.HeaterUse;
import spoolyard.core.record.RunResult;

/**
 * Hand-worked heating of a line of two zones in air of 20 °C, by the closed form of a lump that is heated and loses heat in
 * proportion to its excess (Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section 5.3, from memory).
 *
 * <p>Barrel: 6 kW, 60 kJ/K, 9000 s (fan 2400 s), 5 K below the melt; in the long run 20 + 6 x 9000 / 60 = 920 °C. Die: 0.5 kW,
 * 4 kJ/K, 1800 s (fan 600 s), at the melt; in the long run 245 °C. With PLA at 205 °C from 20 °C: barrel 9000 ln(900 / 720)
 * = 2008.292 s, die 1800 ln(225 / 40) = 3108.998 s. To hold: barrel 180 x 60 / 9000 = 1.2 kW, die 185 x 4 / 1800 = 0.41111 kW.
 */
class HeatByZoneTest {
    private static final double COLD_S = 3108.997707;
    /** (6 x 2008.292 + 1.2 x (3108.998 - 2008.292) + 0.5 x 3108.998) / 3600. */
    private static final double COLD_KWH = 4.145860422;

    private static final double HOLDING_KW = 1.611111111;

    private static final HeatUp ZONES = new HeatUp.Zoned(
            List.of(new HeatZone("barrel", 6, 60, 9000, 2400, -5), new HeatZone("die", 0.5, 4, 1800, 600, 0)), 20);
    private static final Product PETG =
            new Product(new Polymer("PETG", 1270, 1, 240, 1200), PlantSketch.BLACK, 1.75, 1);

    private static PlantSketch cold(double hours, EndOfPeriod end) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = hours;
        sketch.runningAtStart = false;
        sketch.startStop = startStop(ZONES, 0, end);
        return sketch;
    }

    private static StartStop startStop(HeatUp heatUp, double soakS, EndOfPeriod end) {
        return new StartStop(heatUp, new Law.Fixed(soakS), Law.ZERO, Law.ZERO, 0, Law.ZERO, 0, end, 0, CrewNeed.NOBODY);
    }

    private static LineResult line(PlantSketch sketch) {
        return run(sketch).lines().get(0);
    }

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static HeaterUse heaters(LineResult line) {
        return line.use().heaters().orElseThrow();
    }

    private static long seconds(double seconds) {
        return PlantSketch.ticks(seconds);
    }

    @Test
    void theSlowestZoneDecidesWhileTheOthersHold() {
        LineResult line = line(cold(2, EndOfPeriod.HOT_STANDBY).order("SO-1", PlantSketch.WHITE_PLA, 1000));

        assertThat(line.stateS().get(LineState.STARTING)).isCloseTo(COLD_S, within(1e-5));
        assertThat(heaters(line).heatUpKwh()).isCloseTo(COLD_KWH, within(1e-8));
        assertThat(heaters(line).standbyKwh()).isCloseTo(0, within(1e-8));
    }

    @Test
    void soakingHoldsTheSetPoints() {
        PlantSketch sketch = cold(2, EndOfPeriod.HOT_STANDBY).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.startStop = startStop(ZONES, 1800, EndOfPeriod.HOT_STANDBY);

        LineResult line = line(sketch);

        assertThat(line.stateS().get(LineState.STARTING)).isCloseTo(COLD_S + 1800, within(1e-5));
        assertThat(heaters(line).standbyKwh()).isCloseTo(HOLDING_KW * 0.5, within(1e-8));
    }

    /** After 2 h: barrel 20 + 180 exp(-7200 / 9000) = 100.879 °C, 1160.823 s; die 20 + 185 exp(-4) = 23.388 °C, 3081.684 s. */
    @Test
    void aLineThatStoodTwoHoursHeatsFasterThanOneThatStoodOverTheWeekend() {
        PlantSketch evening = cold(6, EndOfPeriod.SHUT_DOWN).order("SO-1", PlantSketch.WHITE_PLA, 5000);
        evening.periods.add(new Window("one", 0, seconds(7200)));
        evening.periods.add(new Window("two", seconds(14400), seconds(40000)));
        PlantSketch weekend = cold(56, EndOfPeriod.SHUT_DOWN).order("SO-1", PlantSketch.WHITE_PLA, 9000);
        weekend.periods.add(new Window("one", 0, seconds(7200)));
        weekend.periods.add(new Window("two", seconds(180000), seconds(400000)));

        LineResult afterTwoHours = line(evening);
        LineResult afterTwoDays = line(weekend);

        assertThat(afterTwoHours.stateS().get(LineState.STARTING)).isCloseTo(COLD_S + 3081.684378, within(1e-5));
        assertThat(heaters(afterTwoHours).heatUpKwh()).isCloseTo(COLD_KWH + 3.003003942, within(1e-8));
        assertThat(afterTwoDays.stateS().get(LineState.STARTING)).isCloseTo(2 * COLD_S, within(1e-5));
        assertThat(heaters(afterTwoDays).heatUpKwh()).isCloseTo(2 * COLD_KWH, within(1e-6));
    }

    /** Barrel 200 to 235 °C 9000 ln(720 / 685) = 448.491 s; die 205 to 240 °C 1800 ln(40 / 5) = 3742.995 s. */
    @Test
    void aPolymerThatIsHotterWaitsForTheWeakestHeater() {
        PlantSketch sketch = cold(3, EndOfPeriod.HOT_STANDBY)
                .order("SO-1", PlantSketch.WHITE_PLA, 1)
                .order("SO-2", PETG, 1000);
        sketch.runningAtStart = true;

        LineResult line = line(sketch);

        assertThat(line.stateS().get(LineState.SET_UP)).isCloseTo(3742.994775, within(1e-5));
        // (6 x 448.491 + 215 x 60 / 9000 x 3294.503 + 0.5 x 3742.995) / 3600
        assertThat(heaters(line).standbyKwh())
                .isCloseTo((6 * 448.491364 + 215.0 / 150 * 3294.503411 + 0.5 * 3742.994775) / 3600, within(1e-7));
        assertThat(heaters(line).heatUpKwh()).isZero();
    }

    /** Barrel 235 to 200 °C with its fan 2400 ln(215 / 180) = 426.435 s; die 600 ln(220 / 185) = 103.963 s, then holds. */
    @Test
    void aPolymerThatIsColderWaitsForTheSlowestFan() {
        PlantSketch sketch =
                cold(3, EndOfPeriod.HOT_STANDBY).order("SO-1", PETG, 1).order("SO-2", PlantSketch.WHITE_PLA, 1000);
        sketch.runningAtStart = true;

        LineResult line = line(sketch);

        assertThat(line.stateS().get(LineState.SET_UP)).isCloseTo(426.434825, within(1e-5));
        assertThat(heaters(line).standbyKwh()).isCloseTo(185.0 / 450 * (426.434825 - 103.963033) / 3600, within(1e-8));
    }

    /** Cut short at 1500 s: barrel 158.166 °C, die 147.215 °C; it cools 100 s and heats from there. */
    @Test
    void aHeatUpThatWasCutShortGoesOnFromWhereTheZonesStand() {
        PlantSketch sketch = cold(3, EndOfPeriod.HOT_STANDBY).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.periods.add(new Window("one", 0, seconds(1500)));
        sketch.periods.add(new Window("two", seconds(1600), seconds(40000)));

        LineResult line = line(sketch);

        double dieC = 20 + 127.215403 * Math.exp(-100.0 / 1800);
        double dieS = 1800 * Math.log((245 - dieC) / 40);
        assertThat(line.stateS().get(LineState.STARTING)).isCloseTo(1500 + dieS, within(1e-4));
        assertThat(line.use().heatUps()).isEqualTo(2);
    }

    /** Cold for the 300 s of the repair; then the die goes 20 + 185 exp(-300 / 1800) = 176.599 to 205 °C. */
    @Test
    void aShortColdStopNeedsAShortHeatUp() {
        PlantSketch sketch = cold(1, EndOfPeriod.HOT_STANDBY).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.runningAtStart = true;
        sketch.stoppages.add(new Stoppage(
                "heater",
                Stoppage.Scope.STATION,
                Stoppage.Clock.RUNNING_TIME,
                new Law.Fixed(1100),
                new Law.Fixed(300),
                CrewNeed.NOBODY,
                Stoppage.Effect.STOPS,
                Stoppage.Restart.COLD_START,
                Optional.empty(),
                false,
                false));

        double dieS = 1800 * Math.log((245 - (20 + 185 * Math.exp(-300.0 / 1800))) / 40);
        assertThat(line(sketch).stateS().get(LineState.STARTING)).isCloseTo(dieS, within(1e-5));
    }

    private static PlantSketch waitingCold(HeatUp heatUp) {
        PlantSketch sketch = cold(8, EndOfPeriod.HOT_STANDBY);
        sketch.startStop = startStop(heatUp, 600, EndOfPeriod.HOT_STANDBY);
        sketch.supply = Optional.of(
                new MaterialSupply(Layout.DOSE_AT_THROAT, 72, 0, new Law.Fixed(900), Law.ZERO, CrewNeed.NOBODY, false));
        Polymer dried = new Polymer("PLA", 1240, 1, 205, 1200, 4 * 3600);
        return sketch.order("SO-1", new Product(dried, PlantSketch.WHITE, 1.75, 1), 1000);
    }

    /** Loaded at 900 s and dry at 15 300 s; heating and soaking end just then. */
    @Test
    void aLineThatWaitsForMaterialIsHotWhenItIsDry() {
        LineResult byLaw = line(waitingCold(new HeatUp.Timed(new Law.Fixed(4500))));
        LineResult byZone = line(waitingCold(ZONES));

        assertThat(byLaw.stateS().get(LineState.WAITING_FOR_MATERIAL)).isCloseTo(15300 - 5100, within(1e-5));
        assertThat(byLaw.stateS().get(LineState.STARTING)).isCloseTo(5100, within(1e-5));
        assertThat(byLaw.stateS().get(LineState.RUNNING)).isCloseTo(8 * 3600 - 15300, within(1e-5));
        assertThat(byZone.stateS().get(LineState.STARTING)).isCloseTo(COLD_S + 600, within(1e-5));
        assertThat(byZone.stateS().get(LineState.RUNNING)).isCloseTo(8 * 3600 - 15300, within(1e-5));
    }

    /** Dry at 15 300 s, but heating and soaking take 17 000 s from 900 s on, when it is known. */
    @Test
    void aHeatUpThatIsLongerThanTheDryingBeginsWhenTheHopperIsLoaded() {
        LineResult line = line(waitingCold(new HeatUp.Timed(new Law.Fixed(16400))));

        assertThat(line.stateS().get(LineState.WAITING_FOR_MATERIAL)).isCloseTo(900, within(1e-5));
        assertThat(line.stateS().get(LineState.RUNNING)).isCloseTo(8 * 3600 - 17900, within(1e-5));
    }

    /** Makes to 2000 s; the night lasts to 5600 s; a shut-down takes the last 1800 s of the day. */
    private static LineEnergy overNight(EndOfPeriod end, HeatUp heatUp) {
        PlantSketch sketch = cold(4, end).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.runningAtStart = true;
        sketch.startStop =
                new StartStop(heatUp, Law.ZERO, Law.ZERO, Law.ZERO, 0, new Law.Fixed(1800), 2, end, 0, CrewNeed.NOBODY);
        sketch.periods.add(new Window("one", 0, seconds(2000)));
        sketch.periods.add(new Window("two", seconds(5600), seconds(40000)));
        EnergyUse use = new EnergyUse(10, 2, 0.5, 0, List.of(new EnergyUse.LineEnergy(18, 4)));
        return EnergyAccount.of(use, run(sketch)).lines().get(0);
    }

    /** Flat: 18 kWh a heat-up, 4 kW in standby, 0.5 kWh/kg at 18 kg/h while it runs; two holdings of 0.85 kg in a shut-down. */
    @Test
    void eachPolicyAtTheEndOfAPeriodHasItsEnergy() {
        HeatUp timed = new HeatUp.Timed(new Law.Fixed(3000));

        LineEnergy shutDown = overNight(EndOfPeriod.SHUT_DOWN, timed);
        LineEnergy standby = overNight(EndOfPeriod.HOT_STANDBY, timed);
        LineEnergy runOn = overNight(EndOfPeriod.RUN_ON, timed);

        // 200 s made, 1800 s shut down, cold to 5600 s, heats to 8600 s, makes to 14400 s
        assertThat(shutDown.heatUpKwh()).isEqualTo(18);
        assertThat(shutDown.standbyKwh()).isCloseTo(0, within(1e-9));
        assertThat(shutDown.massKwh()).isCloseTo(0.5 * (6000 * 0.005 + 1.7), within(1e-9));
        assertThat(shutDown.hotH()).isCloseTo((14400 - 3600) / 3600.0, within(1e-9));
        assertThat(standby.heatUpKwh()).isZero();
        assertThat(standby.standbyKwh()).isCloseTo(4, within(1e-9));
        // made to 2000 s; the melt stood longer than 1200 s, but no melt volume is asked for; on from 5600 s
        assertThat(standby.massKwh()).isCloseTo(0.5 * 10800 * 0.005, within(1e-9));
        assertThat(runOn.heatUpKwh() + runOn.standbyKwh()).isZero();
        assertThat(runOn.massKwh()).isCloseTo(0.5 * 14400 * 0.005, within(1e-9));
    }

    /** In standby the zones draw 1.61111 kW for the hour; shut down at 2000 s they cool for 3600 s. */
    @Test
    void zonesGiveThePoliciesTheirEnergyToo() {
        LineEnergy standby = overNight(EndOfPeriod.HOT_STANDBY, ZONES);
        LineEnergy shutDown = overNight(EndOfPeriod.SHUT_DOWN, ZONES);

        assertThat(standby.standbyKwh()).isCloseTo(HOLDING_KW, within(1e-8));
        double barrelS = 9000 * Math.log((900 - 180 * Math.exp(-0.4)) / 720);
        double dieS = 1800 * Math.log((225 - 185 * Math.exp(-2)) / 40);
        assertThat(shutDown.heatUpKwh())
                .isCloseTo((6 * barrelS + 1.2 * (dieS - barrelS) + 0.5 * dieS) / 3600, within(1e-8));
        assertThat(shutDown.standbyKwh()).isCloseTo(0, within(1e-8));
    }
}
