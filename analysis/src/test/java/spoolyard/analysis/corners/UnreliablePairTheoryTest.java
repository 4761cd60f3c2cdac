package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.analysis.theory.TwoMachineLine;
import spoolyard.analysis.theory.TwoMachineLine.Machine;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult;

/**
 * A line and a sealing place of equal speed with a rack between them; both fail at random while they work. The line stops
 * when the rack is full.
 *
 * <p>Source: {@code checks/lines/continuous_two_machine_odf.csv}, compared with the closed form in
 * {@code TwoMachineLineTheoryTest}. Level 99 %, replications of ten years, fixed seed; from an empty rack, which is forgotten
 * within some hundred units of 87 600.
 *
 * <p>The theory is of a fluid, the plant makes spools. The line holds a part spool until it is full, and the sealing place
 * holds the one it works on, so R places between them hold between R and R + 2 spools of fluid, R + 1 when both part spools
 * are half. The effect is bounded by one spool of buffer either way: that bound is added to the interval, and must be small
 * beside what the buffer does; the fourth case has spools half as large and half the bound.
 */
final class UnreliablePairTheoryTest {
    private static final int REPLICATIONS = 10;

    /** The table's rows p = r = 0.1. */
    @ParameterizedTest
    @CsvSource({"1, 5", "5, 5", "10, 5", "5, 10"})
    void throughputIsThatOfTheContinuousTwoMachineLine(int bufferUnits, int spoolsPerUnit) {
        Machine machine = new Machine(10, 10);
        Corner corner = corner(bufferUnits, spoolsPerUnit);

        String name = "two equal unreliable stations N=" + bufferUnits + " " + spoolsPerUnit + " spools a unit";
        assertPair(name, corner, new TwoMachineLine(machine, machine, spoolsPerUnit, bufferUnits * spoolsPerUnit));
    }

    /** The table's row r = 0.5, p = 0.02 before the buffer, r = 0.25, p = 0.03 after it, N = 5: 0.8847. */
    @Test
    void throughputOfUnequalStationsIsThatOfTheContinuousTwoMachineLine() {
        Corner corner = corner(5, 5)
                .with("/every_line/stoppages/jam/every", "{exponential: {mean: 50 h}}")
                .with("/every_line/stoppages/jam/takes", "{exponential: {mean: 2 h}}")
                .with("/finishing/sealing/stoppages/leak/every", "{exponential: {mean: 2000 min}}")
                .with("/finishing/sealing/stoppages/leak/takes", "{exponential: {mean: 4 h}}");

        Machine first = new Machine(50, 2);
        Machine second = new Machine(100.0 / 3, 4);
        assertPair("two unequal unreliable stations N=5", corner, new TwoMachineLine(first, second, 5, 25));
    }

    private static Corner corner(int bufferUnits, int spoolsPerUnit) {
        return Corner.of("pair")
                .with("/every_line/rate", spoolsPerUnit + " kg/h")
                .with("/finishing/sealing/cycle", "[{batch: 1, takes: " + 3600 / spoolsPerUnit + " s}]")
                .with("/finishing/sealing/rack", bufferUnits * spoolsPerUnit - 1 + " spools");
    }

    /** Theory in spools and hours: its buffer is the rack and one spool more, see above. */
    private static void assertPair(String name, Corner corner, TwoMachineLine theory) {
        double truth = throughput(theory, theory.bufferUnits());
        double more = throughput(theory, theory.bufferUnits() + 1) - truth;
        double less = truth - throughput(theory, theory.bufferUnits() - 1);
        double bias = Math.max(more, less);

        assertThat(bias).isLessThan((truth - throughput(theory, 0)) / 4);
        Agreement.over(corner.replications(REPLICATIONS))
                .on(name + " spools/h", UnreliablePairTheoryTest::spoolsPerH, truth, 0.01, bias);
    }

    private static double throughput(TwoMachineLine line, double bufferUnits) {
        return new TwoMachineLine(line.first(), line.second(), line.speedPerS(), bufferUnits).throughputPerS();
    }

    private static double spoolsPerH(RunResult run) {
        return run.finishing().get(0).spools() / Ticks.toHours(run.horizonTicks());
    }
}
