package spoolyard.analysis.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.core.plant.InspectionLevel;
import spoolyard.core.plant.SamplingPlan;
import spoolyard.core.policy.NormalInspection;

/** Closed forms for sampling, batch queues and impatience against values from outside. */
final class QualityTheoryTest {
    /**
     * MIL-STD-105E, table X-H (n = 50, Ac = 1): quality in per cent defective at which the lot is accepted with the given
     * chance, binomial. From memory; the standard prints three digits, which is the tolerance here.
     */
    @ParameterizedTest
    @CsvSource({"0.712, 95", "1.07, 90", "3.33, 50", "7.56, 10", "9.14, 5"})
    void givesTheCurveOfLetterH(double defectivePercent, double acceptedPercent) {
        AcceptanceCurve plan = new AcceptanceCurve(50, 1);

        assertThat(100 * plan.binomial(defectivePercent / 100)).isCloseTo(acceptedPercent, within(0.2));
    }

    /** S. Hilliard, answer of 2006-02-07 in a public forum on acceptance sampling: the risk points of n = 68, c = 2. */
    @ParameterizedTest
    @CsvSource({"0.01213, 0.95", "0.089704, 0.05"})
    void givesPublishedRiskPoints(double share, double accepted) {
        assertThat(new AcceptanceCurve(68, 2).binomial(share)).isCloseTo(accepted, within(5e-5));
    }

    /** By hand: 0.99^50 = 0.60501 and 50 x 0.01 x 0.99^49 = 0.30556. */
    @Test
    void agreesWithTheBinomialLawByHand() {
        assertThat(new AcceptanceCurve(50, 1).binomial(0.01)).isCloseTo(0.60501 + 0.30556, within(1e-5));
        assertThat(new AcceptanceCurve(1, 1).binomial(0.3)).isCloseTo(1, within(1e-12));
    }

    /** By hand: C(16, 5) / C(20, 5) = 4368 / 15504, and 4 C(16, 4) / C(20, 5) = 7280 / 15504. */
    @Test
    void agreesWithTheHypergeometricLawByHand() {
        assertThat(new AcceptanceCurve(5, 0).hypergeometric(20, 4)).isCloseTo(4368.0 / 15504, within(1e-12));
        assertThat(new AcceptanceCurve(5, 1).hypergeometric(20, 4)).isCloseTo((4368.0 + 7280) / 15504, within(1e-12));
        assertThat(new AcceptanceCurve(20, 3).hypergeometric(20, 4)).isZero();
        assertThat(new AcceptanceCurve(20, 4).hypergeometric(20, 4)).isEqualTo(1, within(1e-12));
    }

    /** In a large lot the two laws are the same. */
    @Test
    void theHypergeometricLawTendsToTheBinomial() {
        AcceptanceCurve plan = new AcceptanceCurve(80, 5);

        assertThat(plan.hypergeometric(1_000_000, 40_000)).isCloseTo(plan.binomial(0.04), within(1e-4));
    }

    /**
     * The producer's risk of normal inspection at the AQL is "in the range of 1 to 13 %" for plans with Ac >= 1, about 5 % for
     * small samples; that is common knowledge of the trade, from memory, no source.
     */
    @Test
    void lotsAtTheLimitAreAcceptedNineTimesInTen() {
        for (char letter : "FGHJKL".toCharArray()) {
            for (double aql : new double[] {1.5, 2.5, 4.0}) {
                SamplingPlan plan = NormalInspection.plan(letter, aql);
                double accepted = new AcceptanceCurve(plan.sampleSize(), plan.acceptance()).binomial(aql / 100);
                assertThat(accepted).as("%s at %s", letter, aql).isBetween(0.87, 0.995);
            }
        }
        assertThat(NormalInspection.letter(InspectionLevel.II, 200)).isEqualTo('G');
    }

    /** One at a time it is M/M/1. */
    @Test
    void aBatchOfOneIsASingleServerQueue() {
        BulkServiceQueue bulk = new BulkServiceQueue(1.0 / 60, 48, 1);
        SingleServerQueue single = new SingleServerQueue(1.0 / 60, 48);

        assertThat(bulk.meanWaitS()).isCloseTo(single.meanWaitS(), within(1e-6));
        assertThat(bulk.busyShare()).isCloseTo(single.utilisation(), within(1e-9));
    }

    /** By hand for K = 2, lambda = mu = 1: r^3 - 2 r + 1 = (r - 1)(r^2 + r - 1), so r is the golden ratio less one. */
    @Test
    void aBatchOfTwoHasTheGoldenRoot() {
        double golden = (Math.sqrt(5) - 1) / 2;

        assertThat(new BulkServiceQueue(1, 1, 2).root()).isCloseTo(golden, within(1e-12));
    }

    /** Without patience it is one server without a queue, Erlang's loss rho / (1 + rho); with endless patience M/M/1. */
    @Test
    void impatienceTendsToErlangsLossAndToNone() {
        assertThat(new ImpatientQueue(1.0 / 60, 48, 0).lostShare()).isCloseTo(0.8 / 1.8, within(1e-12));
        assertThat(new ImpatientQueue(1.0 / 60, 48, 100_000).lostShare()).isCloseTo(0, within(1e-12));
    }

    /** In overload with much patience what is served is what the server can do: 1 - 1 / rho is lost. */
    @Test
    void anOverloadedServerLosesWhatItCannotDo() {
        assertThat(new ImpatientQueue(1.0 / 60, 72, 100_000).lostShare()).isCloseTo(1 - 1 / 1.2, within(1e-9));
    }

    @Test
    void theTailOfTheWaitStartsAtTheChanceOfWaiting() {
        SingleServerQueue queue = new SingleServerQueue(1.0 / 60, 48);

        assertThat(queue.waitTail(0)).isEqualTo(queue.utilisation());
        assertThat(queue.waitTail(240)).isCloseTo(0.8 * Math.exp(-1), within(1e-12));
    }
}
