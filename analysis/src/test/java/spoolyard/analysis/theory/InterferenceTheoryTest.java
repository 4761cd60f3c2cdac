package spoolyard.analysis.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;
import static spoolyard.analysis.theory.CheckTable.number;

import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Closed forms of machine interference against the tables under {@code checks/interference}; sources in
 * {@code checks/SOURCES.md}.
 */
final class InterferenceTheoryTest {
    private static final Percentage DIGITS = Percentage.withPercentage(1e-9);

    @Test
    void agreesWithTheRecomputedTable() {
        for (CSVRecord row : CheckTable.rows("interference/mmc_finite_source.csv")) {
            MachineInterference crew = inServiceTimes(row);

            assertThat(crew.probabilities()[0]).isCloseTo(number(row, "P0_all_running"), DIGITS);
            assertThat(crew.meanWaiting()).isCloseTo(number(row, "mean_waiting_L"), DIGITS);
            assertThat(crew.meanRunning()).isCloseTo(number(row, "mean_running_J"), DIGITS);
            assertThat(crew.runningShare()).isCloseTo(number(row, "machine_running_fraction"), DIGITS);
            assertThat(crew.efficiency()).isCloseTo(number(row, "efficiency_F"), DIGITS);
            assertThat(crew.delayProbability()).isCloseTo(number(row, "prob_delay_D"), DIGITS);
            assertThat(crew.meanWaitS()).isCloseTo(number(row, "mean_wait_in_service_times"), DIGITS);
            assertThat(crew.operatorUtilisation()).isCloseTo(number(row, "operator_utilisation"), DIGITS);
        }
    }

    /** Published with three decimals, cut or rounded: the check allows one unit of the last. */
    @Test
    void agreesWithThePublishedTablesOfPeckAndHazelwood() {
        for (CSVRecord row : CheckTable.rows("interference/peck_hazelwood_published.csv")) {
            MachineInterference crew = inServiceTimes(row);

            assertThat(crew.efficiency()).isCloseTo(number(row, "F_published_3dp"), offset(0.001));
            if (!row.get("D_published_3dp").isEmpty()) {
                assertThat(crew.delayProbability()).isCloseTo(number(row, "D_published_3dp"), offset(0.001));
            }
        }
    }

    @Test
    void constantServiceAgreesWithAshcroft() {
        for (CSVRecord row : CheckTable.rows("interference/ashcroft_md1_finite_source.csv")) {
            ConstantServiceInterference operator = new ConstantServiceInterference(
                    Integer.parseInt(row.get("N_machines")), 1, number(row, "k_service_time_over_mean_run_time"));

            assertThat(operator.meanRunning()).isCloseTo(number(row, "A_N_mean_machines_running"), DIGITS);
            assertThat(operator.runningShare()).isCloseTo(number(row, "machine_running_fraction"), DIGITS);
            assertThat(operator.operatorUtilisation()).isCloseTo(number(row, "operator_utilisation"), DIGITS);
            assertThat(operator.operatorIdleShare()).isCloseTo(number(row, "P0_operator_idle"), within(1e-12));
        }
    }

    @Test
    void aMachineOfItsOwnOperatorNeverWaits() {
        MachineInterference crew = new MachineInterference(3, 3, 100, 25);

        assertThat(crew.meanWaitS()).isZero();
        assertThat(crew.delayProbability()).isZero();
        assertThat(crew.runningShare()).isCloseTo(0.8, within(1e-12));
    }

    @Test
    void refusesArgumentsOutOfRangeAndNamesThem() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MachineInterference(0, 1, 1, 1))
                .withMessage("machines = 0. Must be >= 1.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ConstantServiceInterference(4, 0, 1))
                .withMessage("meanRunS = 0.0. Must be finite and > 0.");
    }

    private static MachineInterference inServiceTimes(CSVRecord row) {
        double factor = number(row, "service_factor_X");
        return new MachineInterference(
                Integer.parseInt(row.get("N_machines")),
                Integer.parseInt(row.get("c_operators")),
                (1 - factor) / factor,
                1);
    }
}
