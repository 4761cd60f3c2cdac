package spoolyard.analysis.corners;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.SwapOverflow;
import spoolyard.core.plant.Law;
import spoolyard.core.quantity.Filament;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.RunResult;

/**
 * One line, its own operator, nobody walks, and the accumulator is home before each swap (60 m at 160 - 100.585 m/min take
 * 60.6 s, a spool takes 200 s): a swap overflows with probability P(S > C/v) and loses v E[(S - C/v)+] metres on average.
 *
 * <p>Source: the line's geometry; closed form of {@link SwapOverflow}. Level 99 %, 20 replications of 10 days, some 4300
 * swaps each, fixed seed. The swap cut off by the end of a run biases by less than 1 in 4300.
 */
final class AccumulatorTheoryTest {
    private static final double SPEED_M_PER_S = new Filament(1240, 1.75).speedMPerS(18);
    private static final int REPLICATIONS = 20;

    @Test
    void lognormalSwapsOverflowAsTheTailOfTheirLaw() {
        agrees("lognormal", "{lognormal: {mean: 30 s, cv: 0.3}}", new Law.Lognormal(30, 0.3));
    }

    @Test
    void gammaSwapsOverflowAsTheTailOfTheirLaw() {
        agrees("gamma", "{gamma: {mean: 30 s, cv: 0.3}}", new Law.Gamma(30, 0.3));
    }

    @Test
    void observedSwapsOverflowAsTheShareOfValuesBeyond() {
        agrees(
                "observed",
                "{observed: [18 s, 22 s, 25 s, 31 s, 36 s, 39 s, 44 s, 28 s]}",
                new Law.Observed(List.of(18.0, 22.0, 25.0, 31.0, 36.0, 39.0, 44.0, 28.0)));
    }

    @Test
    void lognormalSwapsOverflowByMoreThanTheyDoWithMoreRoom() {
        List<RunResult> runs = Corner.of("accumulator")
                .with("/every_line/accumulator", "50 m")
                .with("/every_line/winder/stop", "{lognormal: {mean: 18 s, cv: 0.5}}")
                .replications(REPLICATIONS);

        assertAgreement(runs, "lognormal 50 m", new SwapOverflow(new Law.Lognormal(18, 0.5), 50, SPEED_M_PER_S));
    }

    private static void agrees(String name, String yaml, Law law) {
        List<RunResult> runs =
                Corner.of("accumulator").with("/every_line/winder/stop", yaml).replications(REPLICATIONS);

        assertAgreement(runs, name, new SwapOverflow(law, 60, SPEED_M_PER_S));
    }

    private static void assertAgreement(List<RunResult> runs, String name, SwapOverflow theory) {
        Agreement.over(runs)
                .on(
                        "accumulator " + name + " overflow probability",
                        run -> overflows(line(run)) / (double) line(run).swaps(),
                        theory.probability(),
                        0.05)
                .on(
                        "accumulator " + name + " metres lost a swap",
                        run -> overflowM(line(run)) / line(run).swaps(),
                        theory.meanLossM(),
                        0.05);
    }

    private static LineResult line(RunResult run) {
        return run.lines().get(0);
    }

    private static long overflows(LineResult line) {
        return line.overflows().values().stream().mapToLong(Long::longValue).sum();
    }

    private static double overflowM(LineResult line) {
        return line.overflowM().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }
}
