package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceText;
import spoolyard.scenarios.read.YamlTree;

/** No mapping anywhere in a scenario swallows a key that nobody reads. */
final class UnknownKeyTest {
    static Stream<String> everyMapping() throws IOException {
        Path file = ScenarioFolder.EVERYTHING.resolve("plant.yaml");
        SourceText source = new SourceText(file.toString(), Files.readString(file));
        List<String> pointers = new ArrayList<>();
        collect(YamlTree.parse(source, new Faults()).orElseThrow(), pointers);
        return pointers.stream();
    }

    private static void collect(Node node, List<String> pointers) {
        if (node instanceof Node.Mapping mapping) {
            pointers.add(mapping.origin().field());
            mapping.entries().values().forEach(value -> collect(value, pointers));
        }
        if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(item -> collect(item, pointers));
        }
    }

    @ParameterizedTest
    @MethodSource("everyMapping")
    void reportsAKeyThatNobodyKnows(String pointer) {
        List<Fault> faults = ScenarioFolder.faultsOf(ScenarioFolder.EVERYTHING, pointer + "/qqqqq=1");

        assertThat(faults)
                .anyMatch(f -> f.file().equals("--set")
                        && f.field().startsWith(pointer)
                        && f.text().contains("qqqqq"));
    }
}
