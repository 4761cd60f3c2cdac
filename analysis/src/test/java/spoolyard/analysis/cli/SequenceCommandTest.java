package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

final class SequenceCommandTest {
    private static final String ORRENVALE =
            Path.of("..", "scenarios", "orrenvale").toString();

    @TempDir
    private Path folder;

    @Test
    void isCheaperThanEveryDispatchRuleAndSaysHowFarFromItsBound() {
        Called called = sequence("--replications=0");

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isZero();
        assertThat(cost(called, "this plan"))
                .isLessThan(cost(called, "due date first (today)"))
                .isLessThan(cost(called, "lightest next"))
                .isLessThan(cost(called, "least purge next"));
        assertThat(called.out())
                .containsPattern("No plan can cost less than [\\d ]+: this one is at most [\\d ]+ %\\s+above");
    }

    private static Called sequence(String... options) {
        String[] all = new String[options.length + 3];
        all[0] = "sequence";
        all[1] = ORRENVALE;
        all[2] = "--iterations=100000";
        System.arraycopy(options, 0, all, 3, options.length);
        return Called.with(all);
    }

    private static double cost(Called called, String plan) {
        String row = called.out()
                .lines()
                .filter(line -> line.startsWith(plan))
                .findFirst()
                .orElseThrow();
        return Double.parseDouble(row.substring(26, 37).replace(" ", ""));
    }

    @Test
    void givesTheSamePlanForTheSameSeedAndIterations() {
        assertThat(sequence("--replications=0").out())
                .isEqualTo(sequence("--replications=0").out());
    }

    @Test
    void simulatesThePlanAndWritesAScenarioThatRunsIt() throws IOException {
        Called called = sequence("--replications=2", "--out", folder.toString());

        assertThat(called.out())
                .contains("Simulated, 2 replications on the same random numbers", "Orders at risk")
                .containsPattern("Orders at risk: \\d+ of 120 late in 1 or more of 2 replications");
        assertThat(called.out()).contains("light to dark", "interval of Clopper and Pearson 1934");
        assertThat(Files.readAllLines(folder.resolve("plan.csv"))).hasSize(121);
        assertThat(Files.readAllLines(folder.resolve("orders_at_risk.csv")))
                .hasSize(121)
                .first()
                .asString()
                .startsWith("order_id,due_local,replications,late_share,late_share_low,late_share_high");
        Called run = Called.with(
                "run",
                folder.resolve("plan.yaml").toString(),
                "--replications=1",
                "--no-charts",
                "--out",
                folder.resolve("run").toString());
        assertThat(run.code()).as(run.err()).isZero();
    }

    @Test
    void ranksClearlyDifferentPlansBySimulationTheSameEveryTime() {
        String out = sequence("--robust=2", "--replications=2").out();

        assertThat(out).contains("Robust: 2 clearly different plans found, 2 replications each", "by Bonferroni");
        assertThat(out.lines().takeWhile(line -> !line.isEmpty())).allMatch(line -> line.length() <= 100);
        assertThat(sequence("--robust=2", "--replications=2").out()).isEqualTo(out);
    }

    @Test
    void refusesToRankOnePlanOrWithoutReplications() {
        assertThat(sequence("--robust=1").err()).startsWith("--robust = 1. Must be a whole number from 2 to 26.");
        assertThat(sequence("--robust=3", "--replications=1").err()).startsWith("--replications = 1. Must be a whole");
    }

    @Test
    void thePlanRunsTheSameFromItsTableAndFromLists() throws IOException, ScenarioException {
        sequence("--replications=0", "--out", folder.toString());
        Scenario plan = ScenarioReader.read(folder.resolve("plan.yaml"), List.of());
        StringBuilder lists = new StringBuilder("base: plan.yaml\norders:\n  sequence:\n");
        plan.plant().book().givenSequence().forEach((line, ids) -> lists.append("    " + line + ": " + ids + "\n"));
        Files.writeString(folder.resolve("lists.yaml"), lists);

        assertThat(plan.plant().book().givenSequence().values().stream().flatMap(List::stream))
                .hasSize(120);
        assertThat(plan.warnings()).noneMatch(each -> each.text().contains("plan.csv"));
        assertThat(ordersAsRun("plan.yaml")).isEqualTo(ordersAsRun("lists.yaml"));
    }

    private String ordersAsRun(String scenario) throws IOException {
        Path out = folder.resolve(scenario + "-run");
        Called.with("run", folder.resolve(scenario).toString(), "--replications=1", "--no-charts", "--out=" + out);
        return Files.readString(out.resolve("orders.csv")) + Files.readString(out.resolve("changeovers.csv"));
    }

    @Test
    void doesNotWriteOverItsOwnScenario() {
        sequence("--replications=0", "--out", folder.toString());

        Called again = Called.with(
                "sequence", folder.resolve("plan.yaml").toString(), "--iterations=1000", "--out", folder.toString());

        assertThat(again.code()).isEqualTo(ExitCode.INPUT);
        assertThat(again.err()).contains("Must not be the folder of ", "plan.yaml, which the scenario is read from.");
    }

    @Test
    void keepsFrozenOrdersFirst() {
        Called called = sequence("--replications=0", "--freeze", "L3=SO-4126,SO-4119");

        String line = called.out().substring(called.out().indexOf("L3, "));
        assertThat(line.lines().skip(1).limit(2).map(row -> row.substring(2, 9)))
                .containsExactly("SO-4126", "SO-4119");
    }

    @Test
    void namesTheConflictOfWhatIsFrozen() {
        Called called = sequence("--freeze", "L5=SO-4117");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err())
                .isEqualToIgnoringNewLines(
                        "No plan is possible. Order SO-4117 is frozen on line L5, which cannot make it."
                                + "  Mend: change the order, the line or what is frozen.");
    }

    @Test
    void namesWhatIsWrongWithAnOption() {
        assertThat(sequence("--freeze", "L99=SO-1").err())
                .startsWith("--freeze = L99=SO-1. Must be a line of this plant");
        assertThat(sequence("--freeze", "L1=SO-1").err()).contains("Order SO-1 is frozen but not in the order book.");
        assertThat(sequence("--late=-1").err()).startsWith("--late = -1.0. Must be from 0.0 to ");
    }
}
