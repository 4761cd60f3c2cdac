package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineResult.GaugeResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.LineUse;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.ScrapCause;

final class OeeTest {
    /**
     * Source: ISO 22400-2:2014 formulas with the elements of a widely reproduced training example (420 min planned, 373
     * min of production, 19 271 pieces at one a second, 18 848 good), published as 88.8 %, 86.1 %, 97.8 % and 74.79 %;
     * further digits computed from the formulas.
     */
    @Test
    void agreesWithTheNumericExampleOfTheStandardsFormulas() {
        Oee oee = new Oee(420 * 60, 373 * 60, 19_271, 19_271, 18_848);

        assertThat(oee.availability()).isCloseTo(0.888095238095238, within(1e-14));
        assertThat(oee.effectiveness()).isCloseTo(0.8610813226094728, within(1e-14));
        assertThat(oee.qualityRatio()).isCloseTo(0.9780499195682631, within(1e-14));
        assertThat(oee.index()).isCloseTo(0.7479365079365079, within(1e-14));
    }

    /**
     * Source: P. Willmott and D. McCarthy, TPM: A Route to World-Class Performance, p. 127: 910 min planned, 115 min
     * unplanned stops, 12 min changeovers, 203 cycles of 3 min; published availability 86.0 %, performance
     * 77.7 % (203 / 261 = 77.78 %, cut off there, not rounded).
     */
    @Test
    void agreesWithAPublishedWorkedExample() {
        Oee oee = new Oee(910 * 60, (910 - 115 - 12) * 60, 203 * 3 * 60, 203, 203);

        assertThat(100 * oee.availability()).isCloseTo(86.0, within(0.05));
        assertThat(100 * oee.effectiveness()).isCloseTo(77.7, within(0.08));
    }

    /**
     * Worked by hand: 10 h scheduled, 1 h planned stop, 6 h running and 1 h slowed at 18 kg/h: APT = 7 h, rated 126 kg;
     * slowing lost 5.5 kg and 0.5 kg is unfinished, so PQ = 120 kg; 114 kg good.
     */
    @Test
    void readsTheElementsFromTheStatesAndMassesOfALine() {
        LineResult line = line(
                Map.of(
                        LineState.RUNNING, 6.0,
                        LineState.SLOWED, 1.0,
                        LineState.PURGING, 0.5,
                        LineState.WAITING_FOR_CREW, 1.5,
                        LineState.PLANNED_STOP, 1.0,
                        LineState.NOT_SCHEDULED, 14.0),
                114,
                126,
                5.5,
                0.5);

        Oee oee = Oee.of(line);

        assertThat(oee.availability()).isCloseTo(7.0 / 9, within(1e-14));
        assertThat(oee.effectiveness()).isCloseTo(120.0 / 126, within(1e-14));
        assertThat(oee.qualityRatio()).isCloseTo(114.0 / 120, within(1e-14));
        assertThat(oee.index()).isCloseTo(114.0 / (9 * 18), within(1e-14));
    }

    @Test
    void isNothingForALineThatStoodAllItsPlannedTime() {
        Oee oee = Oee.of(line(Map.of(LineState.DOWN, 8.0), 0, 0, 0, 0));

        assertThat(oee.index()).isZero();
        assertThat(oee.availability()).isZero();
        assertThat(oee.effectiveness()).isNaN();
    }

    @Test
    void isUndefinedForALineThatWasNeverMeantToRun() {
        Oee oee = Oee.of(line(Map.of(LineState.NOT_SCHEDULED, 8.0), 0, 0, 0, 0));

        assertThat(oee.index()).isNaN();
    }

    @Test
    void addsUpOverLinesAndIsNotSpoiltByOneThatMadeNothing() {
        Oee made = Oee.of(line(Map.of(LineState.RUNNING, 8.0), 140, 144, 0, 0));
        Oee stood = Oee.of(line(Map.of(LineState.DOWN, 8.0), 0, 0, 0, 0));

        Oee both = Oee.sumOf(List.of(made, stood));

        assertThat(both.availability()).isEqualTo(0.5);
        assertThat(both.effectiveness()).isEqualTo(1);
        assertThat(both.qualityRatio()).isCloseTo(140.0 / 144, within(1e-14));
    }

    static LineResult line(
            Map<LineState, Double> hours, double goodKg, double ratedKg, double slowedLossKg, double inProcessKg) {
        Map<LineState, Double> stateS = new EnumMap<>(LineState.class);
        for (LineState state : LineState.values()) {
            stateS.put(state, hours.getOrDefault(state, 0.0) * 3600);
        }
        Map<ScrapCause, Double> scrapKg = new EnumMap<>(ScrapCause.class);
        for (ScrapCause cause : ScrapCause.values()) {
            scrapKg.put(cause, 0.0);
        }
        Map<OverflowCause, Long> overflows = new EnumMap<>(OverflowCause.class);
        Map<OverflowCause, Double> overflowM = new EnumMap<>(OverflowCause.class);
        for (OverflowCause cause : OverflowCause.values()) {
            overflows.put(cause, 0L);
            overflowM.put(cause, 0.0);
        }
        return new LineResult(
                "L1",
                stateS,
                Math.round(goodKg),
                0,
                goodKg,
                scrapKg,
                goodKg + inProcessKg,
                inProcessKg,
                ratedKg,
                Math.round(goodKg),
                overflows,
                overflowM,
                slowedLossKg,
                0,
                0,
                0,
                0,
                List.of(),
                scrapKg,
                GaugeResult.NONE,
                LineUse.NONE);
    }
}
