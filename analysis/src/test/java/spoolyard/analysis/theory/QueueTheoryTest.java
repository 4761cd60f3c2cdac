package spoolyard.analysis.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static spoolyard.analysis.theory.CheckTable.number;

import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Closed forms of queues against the tables under {@code checks/queueing}; sources in {@code checks/SOURCES.md}. */
final class QueueTheoryTest {
    /** The tables carry 15 significant digits; the rest is rounding. */
    private static final Percentage DIGITS = Percentage.withPercentage(1e-10);

    @Test
    void singleServerAgreesWithTheTable() {
        for (CSVRecord row : CheckTable.rows("queueing/mm1.csv")) {
            SingleServerQueue queue = new SingleServerQueue(number(row, "lambda"), 1 / number(row, "mu"));

            assertThat(queue.utilisation()).isCloseTo(number(row, "rho"), DIGITS);
            assertThat(queue.meanWaiting()).isCloseTo(number(row, "Lq"), DIGITS);
            assertThat(queue.meanInSystem()).isCloseTo(number(row, "L"), DIGITS);
            assertThat(queue.meanWaitS()).isCloseTo(number(row, "Wq"), DIGITS);
            assertThat(queue.meanInSystemS()).isCloseTo(number(row, "W"), DIGITS);
        }
    }

    @Test
    void severalServersAgreeWithTheTable() {
        for (CSVRecord row : CheckTable.rows("queueing/mmc_erlang_c.csv")) {
            MultiServerQueue queue =
                    new MultiServerQueue(number(row, "lambda"), 1 / number(row, "mu"), Integer.parseInt(row.get("c")));

            assertThat(queue.utilisation()).isCloseTo(number(row, "rho"), DIGITS);
            assertThat(queue.waitingProbability()).isCloseTo(number(row, "erlang_C_prob_wait"), DIGITS);
            assertThat(queue.meanWaiting()).isCloseTo(number(row, "Lq"), DIGITS);
            assertThat(queue.meanInSystem()).isCloseTo(number(row, "L"), DIGITS);
            assertThat(queue.meanWaitS()).isCloseTo(number(row, "Wq"), DIGITS);
            assertThat(queue.meanInSystemS()).isCloseTo(number(row, "W"), DIGITS);
        }
    }

    @Test
    void erlangBAndCAgreeWithTheTable() {
        for (CSVRecord row : CheckTable.rows("queueing/erlang_b_c.csv")) {
            int servers = Integer.parseInt(row.get("servers"));
            double load = number(row, "offered_load_erlang");

            assertThat(Erlang.blockingProbability(servers, load)).isCloseTo(number(row, "erlang_B"), DIGITS);
            if (load < servers) {
                assertThat(Erlang.waitingProbability(servers, load))
                        .isCloseTo(number(row, "erlang_C_if_stable"), DIGITS);
            }
        }
    }

    @Test
    void generalServiceAgreesWithTheTable() {
        for (CSVRecord row : CheckTable.rows("queueing/mg1_pollaczek_khinchine.csv")) {
            GeneralServiceQueue queue = new GeneralServiceQueue(
                    number(row, "lambda"), number(row, "mean_service"), Math.sqrt(number(row, "scv_service")));

            assertThat(queue.utilisation()).isCloseTo(number(row, "rho"), DIGITS);
            assertThat(queue.meanWaiting()).isCloseTo(number(row, "Lq"), DIGITS);
            assertThat(queue.meanInSystem()).isCloseTo(number(row, "L"), DIGITS);
            assertThat(queue.meanWaitS()).isCloseTo(number(row, "Wq"), DIGITS);
            assertThat(queue.meanInSystemS()).isCloseTo(number(row, "W"), DIGITS);
        }
    }

    @Test
    void finiteQueueAgreesWithTheTable() {
        for (CSVRecord row : CheckTable.rows("queueing/mm1k_blocking.csv")) {
            FiniteQueue queue = new FiniteQueue(
                    number(row, "lambda"), 1 / number(row, "mu"), Integer.parseInt(row.get("K_system_capacity")));

            assertThat(queue.probabilityOf(0)).isCloseTo(number(row, "P0"), DIGITS);
            assertThat(queue.blockingProbability()).isCloseTo(number(row, "P_block"), DIGITS);
            assertThat(queue.throughputPerS()).isCloseTo(number(row, "throughput"), DIGITS);
            assertThat(queue.meanInSystem()).isCloseTo(number(row, "L"), DIGITS);
            assertThat(queue.meanInSystemS()).isCloseTo(number(row, "W_accepted"), DIGITS);
        }
    }

    @Test
    void finiteQueueProbabilitiesDoNotOverflowWithAThousandPlaces() {
        FiniteQueue overloaded = new FiniteQueue(3, 1, 1000);

        assertThat(overloaded.blockingProbability()).isCloseTo(2.0 / 3, within(1e-12));
        assertThat(overloaded.probabilityOf(0)).isZero();
    }

    @Test
    void refusesAQueueWithoutSteadyStateAndNamesTheFault() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SingleServerQueue(2, 0.5))
                .withMessage("utilisation = 1.0. Must be < 1: no steady state otherwise.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MultiServerQueue(3, 1, 2))
                .withMessage("utilisation = 1.5. Must be < 1: no steady state otherwise.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Erlang.waitingProbability(2, 2))
                .withMessage("utilisation = 1.0. Must be < 1: no steady state otherwise.");
    }

    @Test
    void refusesArgumentsOutOfRangeAndNamesThem() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new GeneralServiceQueue(0.5, 1, -0.1))
                .withMessage("serviceCv = -0.1. Must be finite and >= 0.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FiniteQueue(Double.NaN, 1, 3))
                .withMessage("arrivalsPerS = NaN. Must be finite and > 0.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FiniteQueue(1, 1, 3).probabilityOf(4))
                .withMessage("number = 4. Must be 0 to 3.");
    }
}
