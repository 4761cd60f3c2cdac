package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.SingleServerQueue;
import spoolyard.core.record.RunResult;

/** The checker of the corners against planted defects. */
final class AgreementTest {
    /** Student's 99 % interval of these is 10 +/- 0.70 (t = 4.604 with 4 degrees of freedom, s = 0.339). */
    private static final double[] VALUES = {9.5, 9.9, 10.0, 10.2, 10.4};

    @Test
    void firesWhereTheTruthIsOutsideTheInterval() {
        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> Agreement.assertAgrees("planted", VALUES, 10.75, 0.1, 0))
                .withMessageContaining("planted");
    }

    @Test
    void firesWhereTheIntervalIsTooWideToTell() {
        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> Agreement.assertAgrees("planted", VALUES, 10, 0.05, 0))
                .withMessageContaining("half-width");
    }

    /** Constant cycles wait half as long as exponential ones: their queue must not pass for M/M/1. */
    @Test
    void firesWhereThePlantIsNotThatOfTheTheory() {
        List<RunResult> runs = Corner.of("packing")
                .with("/time/length", "30 days")
                .with("/finishing/packing/cycle", "[{batch: 1, takes: 48 s}]")
                .replications(5);

        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> Agreement.over(runs)
                        .on(
                                "planted",
                                run -> run.finishing().get(0).meanWaitS(),
                                new SingleServerQueue(1.0 / 60, 48).meanWaitS(),
                                0.1))
                .withMessageContaining("planted");
    }
}
