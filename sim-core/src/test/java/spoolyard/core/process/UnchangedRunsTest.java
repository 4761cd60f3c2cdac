package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.Approval;
import spoolyard.core.plant.ChangeoverRules.SetUpStep;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.Window;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.RunResult;

/**
 * Plants that use none of the parts added later run as they did before there were these parts: event by event, to the
 * tick. The check sums were taken before heating by zone and held product. All laws are fixed, so that they hold on every
 * computer. {@code EarlierProgramTest} of the analysis goes further back, with whole scenarios: to the last commit before
 * dryers, gauge, lab, exposure, stores and money.
 */
class UnchangedRunsTest {
    private static final Product CLEAR =
            new Product(new Polymer("PETG", 1270, 0.95, 240, 1200), PlantSketch.WHITE, 1.75, 0.5);

    private static PlantSketch sketch(EndOfPeriod end, boolean isCold) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = 60;
        sketch.lineCount = 2;
        sketch.strands = 2;
        sketch.rackPlaces = 12;
        sketch.defects = 0.05;
        sketch.runningAtStart = !isCold;
        sketch.roles = List.of(
                new Role("operator", List.of(), false, List.of(), List.of()),
                new Role("fitter", List.of(), false, List.of(), List.of()));
        sketch.heads = List.of(2, 1);
        sketch.startStop = new StartStop(
                new HeatUp.Timed(new Law.Fixed(4500)),
                new Law.Fixed(1800),
                new Law.Fixed(600),
                new Law.Fixed(1080),
                1,
                new Law.Fixed(1800),
                2,
                end,
                3000,
                PlantSketch.OPERATOR);
        for (int day = 0; day < 3; day++) {
            sketch.periods.add(new Window("day", hours(day * 24 + 1), hours(day * 24 + 17)));
        }
        for (int i = 0; i < 12; i++) {
            sketch.order(
                    "SO-" + i,
                    List.of(PlantSketch.WHITE_PLA, PlantSketch.BLACK_PLA, CLEAR).get(i % 3),
                    40 + 7 * i);
        }
        sketch.stoppages.add(breakdown());
        sketch.changeovers = changeovers(sketch.changeovers);
        return sketch;
    }

    private static long hours(double hours) {
        return PlantSketch.ticks(hours * 3600);
    }

    private static Stoppage breakdown() {
        return new Stoppage(
                "breakdown",
                Stoppage.Scope.STATION,
                Stoppage.Clock.RUNNING_TIME,
                new Law.Fixed(9 * 3600),
                new Law.Fixed(2500),
                new CrewNeed(List.of("fitter")),
                Stoppage.Effect.STOPS,
                Stoppage.Restart.COLD_START,
                Optional.empty(),
                false,
                false);
    }

    private static ChangeoverRules changeovers(ChangeoverRules plain) {
        CrewNeed fitter = new CrewNeed(List.of("fitter", "operator"));
        SetUpStep swap = new SetUpStep("feeder swap", new Law.Fixed(360), fitter);
        SetUpStep die = new SetUpStep("die", new Law.Fixed(1200), fitter);
        return new ChangeoverRules(
                plain.measured(),
                plain.unmeasured(),
                List.of(swap),
                List.of(die),
                List.of(),
                45,
                1.5,
                true,
                new Approval(new Law.Fixed(600), fitter, 0.4, 0.5, Approval.Meanwhile.RUN_TO_WASTE));
    }

    @ParameterizedTest
    @CsvSource({
        "SHUT_DOWN, true, 2456634522",
        "SHUT_DOWN, false, 1975320932",
        "HOT_STANDBY, true, 3350164056",
        "RUN_ON, true, 2116596263"
    })
    void runsEventByEventAsBefore(EndOfPeriod end, boolean isCold, long checkSum) {
        StringBuilder told = new StringBuilder();

        RunResult result = new PlantRun(
                        sketch(end, isCold).plant(),
                        7,
                        0,
                        (tick, where, what, detail) -> told.append(
                                isPerson(where) ? "" : tick + " " + where + " " + what + " " + detail + "\n"))
                .run();
        for (LineResult line : result.lines()) {
            told.append(Math.round(line.fedKg() * 1e6)).append(' ').append(Math.round(line.totalScrapKg() * 1e6));
        }

        CRC32 sum = new CRC32();
        sum.update(told.toString().getBytes(StandardCharsets.UTF_8));
        assertThat(sum.getValue()).isEqualTo(checkSum);
    }

    /** What persons do was not told when the check sums were taken. */
    private static boolean isPerson(String where) {
        return where.matches("(operator|fitter|packer) \\d+");
    }
}
