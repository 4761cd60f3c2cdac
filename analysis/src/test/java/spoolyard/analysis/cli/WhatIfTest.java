package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The two-line plant with a plan by hand; what a change costs is tested where it is reckoned. */
final class WhatIfTest {
    private static final String TWO_LINES =
            Path.of("..", "scenarios", "two-lines").toString();

    @TempDir
    private Path folder;

    private Path plan;

    @BeforeEach
    void plan() throws IOException {
        plan = Files.writeString(
                folder.resolve("plan.csv"), "line,order_id\nL1,1003\nL1,1005\nL2,1001\nL2,1004\nL2,1006\nL2,1002\n");
    }

    private Called changed(String... options) {
        List<String> all =
                new ArrayList<>(List.of("sequence", TWO_LINES, "--replications=0", "--from", plan.toString()));
        all.addAll(List.of(options));
        return Called.with(all.toArray(String[]::new));
    }

    @Test
    void showsAPlanAsItIs() {
        Called called = changed();

        assertThat(called.err()).isEmpty();
        assertThat(called.out()).containsPattern("(?s)L1, 2 orders\n  1003 .*\n  1005 .*L2, 4 orders\n  1001 ");
    }

    @Test
    void movesAnOrderTellsTheCostAndWritesThePlan() throws IOException {
        Called called = changed(
                "--move", "1006 L2 first", "--out", folder.resolve("new").toString());

        assertThat(called.err()).isEmpty();
        assertThat(called.out())
                .contains(
                        "1006 goes from L2, place 3, to L2, place 1: ready ",
                        "late spool-days",
                        "By these weights the change")
                .doesNotContain("L1, 2 orders");
        assertThat(Files.readString(folder.resolve("new").resolve("plan.csv")))
                .containsPattern("(?s)L1,1,1003.*L1,2,1005.*L2,1,1006.*L2,2,1001.*L2,3,1004.*L2,4,1002");
        Called next = Called.with(
                "sequence",
                folder.resolve("new").resolve("plan.yaml").toString(),
                "--replications=0",
                "--move=1006 L2 last",
                "--rush=1002");
        assertThat(next.out()).contains("1006 goes from L2, place 1, to L2, place ", "\n1002 ");
    }

    @Test
    void saysThatWhatWasSetForThePlanMustBeSetForItsRun() {
        Called called = changed(
                "--set=/name=Other works", "--out", folder.resolve("new").toString());

        assertThat(called.out()).endsWith("plan.yaml --set \"/name=Other works\"" + System.lineSeparator());
    }

    @Test
    void simulatesBothPlans() {
        Called called =
                Called.with("sequence", TWO_LINES, "--replications=2", "--from=" + plan, "--move=1006 L2 first");

        assertThat(called.out()).containsPattern("this plan +before +difference");
    }

    @Test
    void saysWhatIsWrongWithAChange() {
        assertThat(changed("--move", "1006 to L2").err())
                .isEqualTo(
                        "--move = 1006 to L2. Must be an order, a line and first, last, before ORDER or after ORDER.\n"
                                + "  Mend: write for example --move \"SO-4112 L3 after SO-4107\".\n");
        assertThat(changed("--move", "1006 L2 after").err()).startsWith("--move = 1006 L2 after. Must be an order");
        assertThat(changed("--move", "L2 first").err()).startsWith("--move = L2 first. Must be an order");
        assertThat(changed("--move", "1006 L7 first").err())
                .isEqualTo("--move = 1006 L7 first. There is no line L7; there are L1, L2.\n"
                        + "  Mend: write one of these.\n");
        assertThat(changed("--rush", "1009").err())
                .isEqualTo("--rush = 1009. There is no order 1009 in the order book.\n  Mend: correct the order.\n");
        assertThat(changed("--freeze", "L2=1001", "--move", "1006 L2 before 1001")
                        .err())
                .startsWith("--move = 1006 L2 before 1001. That place is in the frozen part of line L2");
        assertThat(changed("--freeze", "L2=1002").err())
                .startsWith("--freeze. Line L2 of the plan does not begin with the orders that are frozen on it.");
    }

    @Test
    void saysWhatIsWrongWithThePlan() throws IOException {
        Files.writeString(plan, "line,order_id\nL1,1003\nL1,1003\n");

        assertThat(changed().err())
                .contains("plan.csv:3: order_id = 1003. Each order may stand in one sequence, once.");
        assertThat(Called.with("sequence", TWO_LINES, "--from=nowhere.csv").err())
                .startsWith("--from = nowhere.csv. Must be a file that can be read; it is not there.");
        assertThat(Called.with("sequence", TWO_LINES, "--rush=1002").err())
                .startsWith("--rush. Must have a plan to change: the scenario has no given sequence of all orders.");
        assertThat(changed("--seconds=5").err()).startsWith("--seconds = 5.0. Must not stand beside --from");
    }
}
