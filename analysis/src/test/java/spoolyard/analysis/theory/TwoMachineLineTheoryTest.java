package spoolyard.analysis.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static spoolyard.analysis.theory.CheckTable.number;

import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.TwoMachineLine.Machine;

/** The closed form of two machines and a buffer against {@code checks/lines}; sources in {@code checks/SOURCES.md}. */
final class TwoMachineLineTheoryTest {
    private static final Percentage DIGITS = Percentage.withPercentage(1e-9);

    @Test
    void agreesWithTheTable() {
        for (CSVRecord row : CheckTable.rows("lines/continuous_two_machine_odf.csv")) {
            TwoMachineLine line = new TwoMachineLine(
                    machine(number(row, "p1"), number(row, "r1")),
                    machine(number(row, "p2"), number(row, "r2")),
                    1,
                    number(row, "N_buffer"));

            assertThat(line.throughputPerS()).isCloseTo(number(row, "production_rate_speed1"), DIGITS);
            assertThat(line.meanLevelUnits()).isCloseTo(number(row, "mean_buffer_level"), DIGITS);
        }
    }

    /**
     * Source: reversibility of two-machine lines, Gershwin 1994, section 3.3: turned round, the line has the same output,
     * and its buffer is as full as the other's is empty. The table's rows have the better machine second only in part.
     */
    @Test
    void turnedRoundItMakesAsMuchWithTheBufferMirrored() {
        Machine good = machine(0.01, 0.14);
        Machine poor = machine(0.03, 0.25);
        for (double room : new double[] {0.5, 3, 20, 400}) {
            TwoMachineLine line = new TwoMachineLine(good, poor, 2, room);
            TwoMachineLine turned = new TwoMachineLine(poor, good, 2, room);

            assertThat(turned.throughputPerS()).isCloseTo(line.throughputPerS(), DIGITS);
            assertThat(turned.meanLevelUnits()).isCloseTo(room - line.meanLevelUnits(), within(1e-9 * room));
        }
    }

    /** Source: the limits of the same model: no buffer, Buzacott 1967, 1 / (1 + p1/r1 + p2/r2); endless, the worse. */
    @Test
    void tendsToBuzacottWithoutABufferAndToTheWorseMachineWithAnEndlessOne() {
        Machine first = machine(0.01, 0.1);
        Machine second = machine(0.03, 0.2);

        assertThat(new TwoMachineLine(first, second, 1, 0).throughputPerS())
                .isCloseTo(1 / (1 + 0.1 + 0.15), within(1e-12));
        assertThat(new TwoMachineLine(first, second, 1, 1e6).throughputPerS()).isCloseTo(1 / 1.15, within(1e-12));
        assertThat(new TwoMachineLine(second, first, 1, 1e6).throughputPerS()).isCloseTo(1 / 1.15, within(1e-12));
    }

    @Test
    void speedScalesOutputAndRoom() {
        Machine first = machine(0.02, 0.5);
        Machine second = machine(0.03, 0.25);
        TwoMachineLine unit = new TwoMachineLine(first, second, 1, 5);
        TwoMachineLine fast = new TwoMachineLine(first, second, 4, 20);

        assertThat(fast.throughputPerS()).isCloseTo(4 * unit.throughputPerS(), DIGITS);
        assertThat(fast.meanLevelUnits()).isCloseTo(4 * unit.meanLevelUnits(), DIGITS);
    }

    @Test
    void refusesArgumentsOutOfRangeAndNamesThem() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TwoMachineLine(machine(1, 1), machine(1, 1), 1, -1))
                .withMessage("bufferUnits = -1.0. Must be finite and >= 0.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Machine(0, 1))
                .withMessage("meanUpS = 0.0. Must be finite and > 0.");
    }

    private static Machine machine(double failureRate, double repairRate) {
        return new Machine(1 / failureRate, 1 / repairRate);
    }
}
