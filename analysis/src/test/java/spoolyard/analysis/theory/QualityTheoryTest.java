package spoolyard.analysis.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
     * The producer's risk of normal inspection at the AQL is "in the range of 1 to 13 %"; that is common knowledge of the
     * trade, from memory, no source. Every letter and limit whose plan is its own.
     */
    @Test
    void lotsAtTheLimitAreAcceptedNineTimesInTen() {
        int[] samples = {2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000};
        int plans = 0;
        for (int row = 0; row < samples.length; row++) {
            for (double aql : NormalInspection.limitsPercent()) {
                SamplingPlan plan = NormalInspection.plan("ABCDEFGHJKLMNPQR".charAt(row), aql);
                if (plan.sampleSize() == samples[row]) {
                    double accepted = new AcceptanceCurve(plan.sampleSize(), plan.acceptance()).binomial(aql / 100);
                    assertThat(accepted).as("n = %d at %s", samples[row], aql).isBetween(0.87, 0.995);
                    plans++;
                }
            }
        }
        assertThat(plans).isEqualTo(99);
    }

    /**
     * Mean number of defective in a sample at which it is accepted with 95 and 10 %, Poisson: J. M. Cameron, "Tables for
     * constructing and for computing the operating characteristics of single-sampling plans", Industrial Quality Control 9,
     * 1952, from memory (half a quantile of chi-square with 2 Ac + 2 degrees of freedom). The binomial law of a sample of a
     * million is Poisson to 1e-5; the third decimal of the mean is worth 2e-4 of chance.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0.0513, 2.303",
        "1, 0.355, 3.890",
        "2, 0.818, 5.322",
        "3, 1.366, 6.681",
        "5, 2.613, 9.275",
        "7, 3.981, 11.771",
        "10, 6.169, 15.407",
        "14, 9.246, 20.128",
        "21, 14.894, 28.184"
    })
    void givesTheMeansOfPoissonForEveryAcceptanceNumber(int acceptance, double at95, double at10) {
        AcceptanceCurve curve = new AcceptanceCurve(1_000_000, acceptance);

        assertThat(curve.binomial(at95 / 1e6)).isCloseTo(0.95, within(2.1e-4));
        assertThat(curve.binomial(at10 / 1e6)).isCloseTo(0.10, within(2.1e-4));
    }

    /** Poisson, mean 0.5 and Ac 1: 1.5 exp(-0.5) = 0.909796; the binomial law of n = 2000 and 0.025 % is within 1e-4 of it. */
    @Test
    void aSmallLimitIsPoisson() {
        SamplingPlan plan = NormalInspection.plan('R', 0.025);

        assertThat(new AcceptanceCurve(plan.sampleSize(), plan.acceptance()).binomial(0.00025))
                .isCloseTo(0.909796, within(1e-4));
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

    /**
     * As above, worked on: idle with p, busy with n waiting p r^n, together p (1 + 1 / (1 - r)) = p (1 + f^2) = 1 with f = (1 +
     * sqrt 5) / 2. Busy f^2 / (1 + f^2) of the time; mean wait p r / (1 - r)^2 = f^3 / (1 + f^2) = 1.17082.
     */
    @Test
    void aBatchOfTwoHasItsWaitByHand() {
        BulkServiceQueue two = new BulkServiceQueue(1, 1, 2);

        assertThat(two.busyShare()).isCloseTo(0.723607, within(1e-6));
        assertThat(two.meanWaitS()).isCloseTo(1.170820, within(1e-6));
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
