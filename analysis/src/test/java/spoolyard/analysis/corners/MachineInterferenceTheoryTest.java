package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.analysis.theory.ConstantServiceInterference;
import spoolyard.analysis.theory.MachineInterference;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult;

/**
 * Lines that stop at random and operators who put them right, with spools that change by themselves in no time: machine
 * interference. Mean repair 10 min; mean run 90 min (service factor X = 0.1) unless said.
 *
 * <p>Source: {@code checks/interference}: Peck and Hazelwood's published values, the recomputed table, and Ashcroft for
 * repairs of constant length; {@code InterferenceTheoryTest} compares the closed forms with them. Level 99 %, replications
 * of a year from all lines running, fixed seed. A line runs and stops some 5000 times a year and the start is forgotten
 * within a few: no visible bias.
 */
final class MachineInterferenceTheoryTest {
    private static final int REPLICATIONS = 10;

    /** Published efficiencies F = 1 - (share of time waiting), X = 0.10, three decimals; rounding is half of the last. */
    @ParameterizedTest
    @CsvSource({"12, 1, 0.764", "12, 3, 0.996", "20, 2, 0.878", "20, 3, 0.975"})
    void efficiencyIsThatOfPeckAndHazelwood(int lines, int operators, double published) {
        Agreement.over(runs(lines, operators, "{exponential: {mean: 10 min}}"))
                .on(
                        "Peck-Hazelwood F (published) N=" + lines + " c=" + operators,
                        run -> 1 - share(run, LineState.WAITING_FOR_CREW),
                        published,
                        0.01,
                        0.0005);
    }

    /** Published chances of delay D of a line that calls, X = 0.10, three decimals. */
    @ParameterizedTest
    @CsvSource({"12, 1, 0.879", "12, 3, 0.098"})
    void chanceOfDelayIsThatOfPeckAndHazelwood(int lines, int operators, double published) {
        double[] delays = new double[REPLICATIONS];
        for (int number = 0; number < REPLICATIONS; number++) {
            CallWatch watch = new CallWatch("tangle");
            corner(lines, operators, "{exponential: {mean: 10 min}}").replication(number, watch);
            delays[number] = watch.delayedShare();
        }

        Agreement.assertAgrees(
                "Peck-Hazelwood D (published) N=" + lines + " c=" + operators, delays, published, 0.03, 0.0005);
    }

    @ParameterizedTest
    @CsvSource({"4, 1", "8, 2", "8, 3", "12, 1", "12, 2", "20, 1", "20, 3"})
    void runningShareAndWaitAreThoseOfExponentialRepair(int lines, int operators) {
        MachineInterference theory = new MachineInterference(lines, operators, 5400, 600);
        String name = String.format(Locale.ROOT, "interference N=%d c=%d ", lines, operators);

        Agreement.over(runs(lines, operators, "{exponential: {mean: 10 min}}"))
                .on(name + "running share", run -> share(run, LineState.RUNNING), theory.runningShare(), 0.01)
                .on(name + "down share", run -> share(run, LineState.DOWN), inRepair(theory), 0.02)
                .on(name + "mean wait s", MachineInterferenceTheoryTest::meanWaitS, theory.meanWaitS(), 0.06)
                .on(name + "operator utilisation", run -> busyShare(run), theory.operatorUtilisation(), 0.02);
    }

    @ParameterizedTest
    @CsvSource({"4", "8", "12", "20"})
    void runningShareIsAshcroftsWhereRepairsAreConstant(int lines) {
        ConstantServiceInterference theory = new ConstantServiceInterference(lines, 5400, 600);

        Agreement.over(runs(lines, 1, "10 min"))
                .on(
                        "Ashcroft N=" + lines + " running share",
                        run -> share(run, LineState.RUNNING),
                        theory.runningShare(),
                        0.01);
    }

    @Test
    void everyLineRunsAloneWithAnOperatorOfItsOwn() {
        List<RunResult> runs = runs(4, 4, "{exponential: {mean: 10 min}}");

        assertThat(runs).allSatisfy(run -> assertThat(share(run, LineState.WAITING_FOR_CREW))
                .isZero());
        Agreement.over(runs).on("interference N=4 c=4 running share", run -> share(run, LineState.RUNNING), 0.9, 0.01);
    }

    private static List<RunResult> runs(int lines, int operators, String repair) {
        return corner(lines, operators, repair).replications(REPLICATIONS);
    }

    private static Corner corner(int lines, int operators, String repair) {
        return Corner.of("interference/" + lines + "-lines")
                .with("/shifts/pattern/A/crew/operator", Integer.toString(operators))
                .with("/every_line/stoppages/tangle/takes", repair);
    }

    private static double inRepair(MachineInterference theory) {
        return theory.meanRunning() * theory.meanRepairS() / theory.meanRunS() / theory.machines();
    }

    private static double share(RunResult run, LineState state) {
        double sumS = run.lines().stream()
                .mapToDouble(line -> line.stateS().get(state))
                .sum();
        return sumS / run.lines().size() / Ticks.toSeconds(run.horizonTicks());
    }

    private static double meanWaitS(RunResult run) {
        double waitS = 0;
        long count = 0;
        for (LineResult line : run.lines()) {
            waitS += line.stoppages().get(0).waitS();
            count += line.stoppages().get(0).count();
        }
        return waitS / count;
    }

    private static double busyShare(RunResult run) {
        return run.crew().get(0).busyS() / run.crew().get(0).presentS();
    }
}
