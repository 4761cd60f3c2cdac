package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.core.gauge.SpoolLoss;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/**
 * Hand-worked excursions of one 18 kg/h PLA line: 0.005 kg/s, 1.67642 m/s, a spool of 1 kg in 200 s, swaps of 18 s and 32
 * s of finishing, accumulator home 30.5 s after a swap.
 */
class ExcursionTest {
    private static final Law FIVE_HUNDRED = new Law.Fixed(500);
    private static final Law TEN = new Law.Fixed(10);

    private static PlantSketch sketch(Law untilNext, Law length, Gauge.Policy policy) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = 1;
        sketch.gauge =
                Optional.of(new Gauge(List.of(Gauge.Excursions.ofAll(untilNext, length)), policy, Optional.empty()));
        return sketch.order("SO-1", PlantSketch.WHITE_PLA, 1000);
    }

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static LineResult line(PlantSketch sketch) {
        return run(sketch).lines().get(0);
    }

    @Test
    void cuttingMakesAShortSpoolAndWasteUntilInTolerance() {
        LineResult line = line(sketch(FIVE_HUNDRED, TEN, new Gauge.Policy.Cut()));

        // Out from 500 to 510, 1010 to 1020, ... 3560 to 3570 s: 7 times. From each end two spools of 200 s fill, then
        // 100 s = 0.5 kg are on the spool that is cut. The last short spool is in hand until 3610 s.
        assertThat(line.gauge()).isEqualTo(new LineResult.GaugeResult(7, 70, 6, 0, 0, 0, 0));
        assertThat(line.goodSpools()).isEqualTo(14);
        assertThat(line.goodKg()).isCloseTo(14, within(1e-6));
        assertThat(line.swaps()).isEqualTo(14 + 7);
        assertThat(line.scrapKg().get(ScrapCause.OUT_OF_TOLERANCE)).isCloseTo(7 * 0.05, within(1e-9));
        assertThat(line.scrapKg().get(ScrapCause.GAUGE_CUT)).isCloseTo(6 * 0.5, within(1e-6));
        assertThat(line.inProcessKg()).isCloseTo(0.5 + 0.15, within(1e-6));
        assertThat(line.stateS().get(LineState.RUNNING)).isCloseTo(3600, within(1e-6));
        assertThat(line.ratedKg()).isCloseTo(18, within(1e-9));
    }

    @Test
    void cuttingDuringASwapScrapsTheAccumulatorOnly() {
        LineResult line = line(sketch(new Law.Fixed(210), TEN, new Gauge.Policy.Cut()));

        // Out from 210 s, 10 s after the first spool is full: 0.05 kg in the accumulator, none on a spool. In tolerance
        // from 220 s; the next spool is full at 420 s, out at 430 s, and so on: 220 s a round, 16 rounds and 80 s.
        assertThat(line.scrapKg().get(ScrapCause.GAUGE_CUT)).isCloseTo(16 * 0.05, within(1e-6));
        assertThat(line.scrapKg().get(ScrapCause.OUT_OF_TOLERANCE)).isCloseTo(16 * 0.05, within(1e-9));
        assertThat(line.gauge().cutSpools()).isZero();
        assertThat(line.swaps()).isEqualTo(16);
    }

    @Test
    void secondQualityFinishesTheSpoolAndCountsItApart() {
        LineResult line = line(sketch(FIVE_HUNDRED, TEN, new Gauge.Policy.BGrade()));

        // Spool n is made from 200 (n - 1) to 200 n s: the 7 excursions fall on spools 3, 6, 8, 11, 13, 16 and 18, the
        // last of which is full at 3600 s and not taken off.
        assertThat(line.gauge().bGradeSpools()).isEqualTo(6);
        assertThat(line.gauge().bGradeKg()).isCloseTo(6, within(1e-6));
        assertThat(line.goodSpools()).isEqualTo(11);
        assertThat(line.swaps()).isEqualTo(18);
        assertThat(line.totalScrapKg()).isCloseTo(0, within(1e-9));
    }

    @Test
    void secondQualityIsNotForTheOrder() {
        PlantSketch sketch = sketch(FIVE_HUNDRED, TEN, new Gauge.Policy.BGrade());
        sketch.orders.clear();
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 5);

        RunResult result = run(sketch);

        // Good are spools 1, 2, 4, 5 and 7; the seventh is full at 1400 s and off the winder 50 s later.
        assertThat(result.orders().get(0).madeTick()).isEqualTo(PlantSketch.ticks(1450));
        assertThat(result.flow().made()).isEqualTo(5);
    }

    @Test
    void anExcursionOverTheEndOfASpoolSpoilsBoth() {
        LineResult both = line(sketch(new Law.Fixed(390), new Law.Fixed(20), new Gauge.Policy.BGrade()));
        LineResult next = line(sketch(new Law.Fixed(405), new Law.Fixed(5), new Gauge.Policy.BGrade()));

        // Out every 410 s: from 390 on spools 2 and 3, from 800 to 820 on 5 (800 is the end of 4), 1210 on 7, 1620 on
        // 9,
        // 2030 on 11, 2440 on 13, 2850 on 15, 3260 on 17. The other: 405 s is in the swap, and its metres go on spool
        // 3;
        // then 815, 1225, 1635, 2045, 2455, 2865, 3275: the same but for spool 2.
        assertThat(both.gauge().bGradeSpools()).isEqualTo(9);
        assertThat(next.gauge().bGradeSpools()).isEqualTo(8);
    }

    @Test
    void aFlaggedSpoolIsGoodUnlessItIsRejected() {
        LineResult kept = line(sketch(FIVE_HUNDRED, TEN, new Gauge.Policy.Flag(0)));
        LineResult rejected = line(sketch(FIVE_HUNDRED, TEN, new Gauge.Policy.Flag(1)));

        // The spools are those of the second quality.
        assertThat(kept.goodSpools()).isEqualTo(17);
        assertThat(kept.gauge().flaggedSpools()).isEqualTo(7);
        assertThat(kept.gauge().flaggedRejectedSpools()).isZero();
        assertThat(rejected.goodSpools()).isEqualTo(11);
        assertThat(rejected.gauge().flaggedRejectedSpools()).isEqualTo(6);
        assertThat(rejected.scrapKg().get(ScrapCause.FLAGGED_SPOOL)).isCloseTo(6, within(1e-6));
        assertThat(rejected.rejectedSpools()).isZero();
    }

    @Test
    void aHaltEndsTheExcursion() {
        PlantSketch sketch = sketch(new Law.Fixed(1000), new Law.Fixed(500), new Gauge.Policy.Cut());
        sketch.stoppages.add(stoppage(Stoppage.Restart.THREAD_UP));

        LineResult line = line(sketch);

        // Out from 1000 s, halted at 1100 s for 300 s, in tolerance from 1400 s, out again from 2400 to 2500 s.
        assertThat(line.gauge().excursions()).isEqualTo(2);
        assertThat(line.gauge().outS()).isCloseTo(200, within(1e-9));
        assertThat(line.scrapKg().get(ScrapCause.OUT_OF_TOLERANCE)).isCloseTo(1, within(1e-9));
    }

    @Test
    void aPauseHoldsTheExcursion() {
        PlantSketch sketch = sketch(new Law.Fixed(1000), new Law.Fixed(500), new Gauge.Policy.Cut());
        sketch.stoppages.add(stoppage(Stoppage.Restart.NONE));

        LineResult line = line(sketch);

        // Out from 1000 s, paused from 1100 to 1400 s, in tolerance from 1800 s, out from 2800 s on: paused there from
        // 2500 to 2800 s, so out from 3100 s, to the end at 3600 s.
        assertThat(line.gauge().excursions()).isEqualTo(2);
        assertThat(line.gauge().outS()).isCloseTo(1000, within(1e-9));
    }

    private static Stoppage stoppage(Stoppage.Restart restart) {
        return new Stoppage(
                "cause",
                Stoppage.Scope.STATION,
                Stoppage.Clock.RUNNING_TIME,
                new Law.Fixed(1100),
                new Law.Fixed(300),
                CrewNeed.NOBODY,
                Stoppage.Effect.STOPS,
                restart,
                Optional.empty(),
                false,
                false);
    }

    @Test
    void excursionsOfAnotherProductStand() {
        PlantSketch sketch = sketch(FIVE_HUNDRED, TEN, new Gauge.Policy.BGrade());
        Gauge.Excursions ofPc = new Gauge.Excursions("PC", 1.75, FIVE_HUNDRED, TEN);
        Gauge.Excursions ofThick = new Gauge.Excursions("PLA", 2.85, FIVE_HUNDRED, TEN);
        sketch.gauge = Optional.of(new Gauge(List.of(ofPc, ofThick), new Gauge.Policy.BGrade(), Optional.empty()));

        assertThat(line(sketch).gauge()).isEqualTo(LineResult.GaugeResult.NONE);
    }

    /**
     * Renewal theory (see {@link SpoolLoss}) against the plant with a winder that takes no time, 24 replications of 500
     * h; the tolerance is four standard errors of their mean (level 99.94 % by Student's t with 23 degrees of freedom).
     */
    @ParameterizedTest
    @CsvSource({"1200,6", "200,30", "90,45"})
    void losesWhatRenewalTheorySays(double meanInToleranceS, double lengthS) {
        SpoolLoss loss = new SpoolLoss(meanInToleranceS, lengthS, 200);

        assertAgreement(meanInToleranceS, lengthS, new Gauge.Policy.Cut(), loss.cutShare());
        assertAgreement(meanInToleranceS, lengthS, new Gauge.Policy.BGrade(), loss.touchedShare());
    }

    private static void assertAgreement(double inS, double outS, Gauge.Policy policy, double expected) {
        PlantSketch sketch = sketch(new Law.Exponential(inS), new Law.Fixed(outS), policy);
        sketch.hours = 500;
        sketch.orders.clear();
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 1_000_000);
        sketch.stopTimeS = Law.ZERO;
        sketch.finishTimeS = Law.ZERO;
        sketch.swapCrew = CrewNeed.NOBODY;
        sketch.rackPlaces = 1_000_000;
        int n = 24;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            LineResult line = new PlantRun(sketch.plant(), 11, i, EventLog.SILENT)
                    .run()
                    .lines()
                    .get(0);
            double lost = 1 - line.goodKg() / (line.fedKg() - line.inProcessKg());
            sum += lost / n;
            squares += lost * lost / n;
        }
        double error = Math.sqrt((squares - sum * sum) / (n - 1));
        assertThat(sum).isCloseTo(expected, within(4 * error));
        assertThat(error).isLessThan(0.01);
    }
}
