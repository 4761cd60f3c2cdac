package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
 * <p>Source: {@code checks/lines/continuous_two_machine_odf.csv}, rows p = r = 0.1 per unit of time, compared with the closed
 * form in {@code TwoMachineLineTheoryTest}. Level 99 %, replications of ten years, fixed seed; from an empty rack, which is
 * forgotten within some hundred units of 87 600.
 *
 * <p>The theory is of a fluid, the plant makes spools. The line holds a part spool until it is full, and the sealing place
 * holds the one it works on, so R places between them hold between R and R + 2 spools of fluid, R + 1 when both part spools
 * are half. The effect is bounded by one spool of buffer either way: that bound is added to the interval, and must be small
 * beside what the buffer does; the last case has spools half as large and half the bound.
 */
final class UnreliablePairTheoryTest {
    private static final int REPLICATIONS = 10;

    @ParameterizedTest
    @CsvSource({"1, 5", "5, 5", "10, 5", "5, 10"})
    void throughputIsThatOfTheContinuousTwoMachineLine(int bufferUnits, int spoolsPerUnit) {
        double truth = share(bufferUnits);
        double spool = 1.0 / spoolsPerUnit;
        double bias = Math.max(share(bufferUnits + spool) - truth, truth - share(bufferUnits - spool));
        List<RunResult> runs = Corner.of("pair")
                .with("/every_line/rate", spoolsPerUnit + " kg/h")
                .with("/finishing/sealing/cycle", "[{batch: 1, takes: " + 3600 / spoolsPerUnit + " s}]")
                .with("/finishing/sealing/rack", bufferUnits * spoolsPerUnit - 1 + " spools")
                .replications(REPLICATIONS);

        assertThat(bias).isLessThan((truth - share(0)) / 4);
        Agreement.over(runs)
                .on(
                        "two unreliable stations N=" + bufferUnits + " " + spoolsPerUnit + " spools a unit",
                        run -> outputShare(run, spoolsPerUnit),
                        truth,
                        0.01,
                        bias);
    }

    private static double share(double bufferUnits) {
        Machine machine = new Machine(10, 10);
        return new TwoMachineLine(machine, machine, 1, bufferUnits).throughputPerS();
    }

    private static double outputShare(RunResult run, int spoolsPerUnit) {
        return run.finishing().get(0).spools() / (spoolsPerUnit * Ticks.toHours(run.horizonTicks()));
    }
}
