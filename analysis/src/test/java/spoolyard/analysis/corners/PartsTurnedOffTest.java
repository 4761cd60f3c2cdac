package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spoolyard.core.process.PlantRun;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.CrewResult;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

/**
 * Turning a part of the model off in a scenario gives the results of the scenario that never had it, to the last bit
 * (what was fed to the milligram), whichever way of the format turns it off. Every case also has a setting that turns the part on, and that must show: a
 * comparison that passes whatever happens would be found by it.
 */
final class PartsTurnedOffTest {
    private static final Path CASES = Path.of("src/test/resources/corners/turned-off.yaml");
    private static final Path SCENARIOS = Path.of("..", "scenarios");

    /** A part, a scenario made to be without it, and settings over that which leave it off and turn it on. */
    record Part(String name, String scenario, List<String> without, List<String> off, List<String> on) {
        @Override
        public String toString() {
            return scenario + ": " + name;
        }
    }

    static Stream<Part> parts() throws IOException {
        JsonNode cases = new YAMLMapper().readTree(Files.readString(CASES));
        return StreamSupport.stream(cases.spliterator(), false)
                .map(each -> new Part(
                        each.get("part").asText(),
                        each.get("scenario").asText(),
                        texts(each.path("without")),
                        texts(each.get("off")),
                        texts(each.get("on"))));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(item -> texts.add(item.asText()));
        return texts;
    }

    private static RunResult run(String scenario, List<String> settings) throws ScenarioException {
        List<String> all = new ArrayList<>(settings);
        all.add("/time/length=8 days");
        return new PlantRun(
                        ScenarioReader.read(SCENARIOS.resolve(scenario), all).plant(), 20270301, 0, EventLog.SILENT)
                .run();
    }

    private static List<String> over(List<String> without, List<String> more) {
        return Stream.concat(without.stream(), more.stream()).toList();
    }

    /** What the plant makes, and who works how long on it; not what the parts tell of themselves. */
    private static List<Object> production(RunResult result) {
        List<Object> production = new ArrayList<>();
        for (LineResult line : result.lines()) {
            production.add(line.line());
            production.add(line.stateS());
            production.addAll(List.of(line.goodSpools(), line.rejectedSpools(), line.swaps()));
            production.addAll(List.of(line.goodKg(), milligrams(line.fedKg()), line.inProcessKg(), line.scrapKg()));
            production.addAll(List.of(line.overflows(), line.overflowM()));
            line.stoppages().stream().filter(stop -> stop.count() > 0).forEach(production::add);
        }
        production.addAll(List.of(result.shifts(), result.orders(), result.changeovers()));
        result.crew().stream().map(PartsTurnedOffTest::work).forEach(production::addAll);
        return production;
    }

    /** Events that change nothing may cut the same mass into other pieces, whose sum differs in the last bit. */
    private static long milligrams(double kg) {
        return Math.round(1e6 * kg);
    }

    /** All but what the hours are paid. */
    private static List<Object> work(CrewResult crew) {
        return List.of(
                crew.role(),
                crew.shift(),
                List.of(crew.presentS(), crew.busyS(), crew.walkingS(), crew.breakS(), crew.paidS()),
                List.of(crew.tasks(), crew.meanWaitS(), crew.longestWaitS()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("parts")
    void givesWhatThePlantWithoutThePartGives(Part part) throws Exception {
        List<Object> without = production(run(part.scenario(), part.without()));

        List<Object> off = production(run(part.scenario(), over(part.without(), part.off())));

        assertThat(off).isEqualTo(without);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("parts")
    void wouldSeeThePart(Part part) throws Exception {
        List<Object> without = production(run(part.scenario(), part.without()));

        List<Object> on = production(run(part.scenario(), over(part.without(), part.on())));

        assertThat(on).isNotEqualTo(without);
    }
}
