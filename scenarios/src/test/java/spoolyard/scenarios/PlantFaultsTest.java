package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceText;
import spoolyard.scenarios.read.YamlTree;

/** Faults in the YAML file, each planted alone in a sound scenario. */
final class PlantFaultsTest {
    private static final Path PLANTED = Path.of("src/test/resources/planted-faults.yaml");

    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    @BeforeEach
    void copy() {
        folder = ScenarioFolder.everything(parent);
    }

    static Stream<Map<String, String>> plantedFaults() throws IOException {
        SourceText source = new SourceText(PLANTED.toString(), Files.readString(PLANTED));
        Node list = YamlTree.parse(source, new Faults()).orElseThrow();
        return ((Node.Sequence) list).items().stream().map(item -> ((Node.Mapping) item)
                .entries().entrySet().stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, e -> ((Node.Text) e.getValue()).text())));
    }

    @ParameterizedTest
    @MethodSource("plantedFaults")
    void reportsAPlantedFaultWithPlaceAndMend(Map<String, String> planted) {
        folder.replace("plant.yaml", planted.get("old"), planted.get("new"));
        String at = planted.getOrDefault("at", planted.get("new"));

        Fault fault = folder.onlyFault();

        assertThat(fault.text())
                .isEqualTo(
                        folder.at("plant.yaml", at) + ": " + planted.get("says") + "\n  Mend: " + planted.get("mend"));
        assertThat(fault.kind()).isEqualTo(FaultKind.valueOf(planted.get("kind")));
    }

    @Test
    void reportsAllFaultsOfAllFilesAtOnce() {
        folder.replace("plant.yaml", "rate: 44 kg/h", "rate: 44 m")
                .replace("plant.yaml", "open: [D]", "open: [Z]")
                .replace("plant.yaml", "name: Everything", "nmae: Everything")
                .replace("orders.csv", "A-3,PLA", "A-1,PLA")
                .replace("colours.csv", "RED,Red,43", "RED,Red,430")
                .replace("changeovers.csv", "2.5", "-2.5");

        List<Fault> faults = folder.faults();

        assertThat(faults)
                .extracting(f -> f.origin().where(), Fault::kind)
                .containsExactlyInAnyOrder(
                        tuple(folder.at("plant.yaml", "rate: 44 m"), FaultKind.WRONG_UNIT),
                        tuple(folder.at("plant.yaml", "open: [Z]"), FaultKind.UNKNOWN_NAME),
                        tuple(folder.at("plant.yaml", "nmae:"), FaultKind.UNKNOWN_KEY),
                        tuple(folder.at("orders.csv", "A-1,PLA,BLK"), FaultKind.DUPLICATE_NAME),
                        tuple(folder.at("colours.csv", "RED,Red"), FaultKind.OUT_OF_RANGE),
                        tuple(folder.at("changeovers.csv", "L1,PLA"), FaultKind.OUT_OF_RANGE));
    }

    @Test
    void reportsAFaultInWhatLinesShareOnce() {
        folder.replace("plant.yaml", "start_up_hold_ups: 1", "start_up_hold_ups: many");

        assertThat(folder.onlyFault().field()).isEqualTo("/every_line/start_up_hold_ups");
    }

    @Test
    void sortsFaultsByFileAndLine() {
        folder.replace("plant.yaml", "rate: 44 kg/h", "rate: 44 m")
                .replace("plant.yaml", "rate: 18 kg/h", "rate: 18 m");

        assertThat(folder.faults()).extracting(Fault::line).isSorted();
    }

    @Test
    void reportsOverlappingShiftsOnceWithTheFirstDate() {
        folder.replace("plant.yaml", "start: 22:00", "start: 13:30");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.OVERLAPPING_SHIFTS);
        assertThat(fault.text())
                .isEqualTo(folder.at("plant.yaml", "    N:\n      days")
                        + ": /shifts/pattern/N = shift N of 2027-03-01 from 13:30."
                        + " Must not begin before shift D of 2027-03-01 ends.\n"
                        + "  Mend: correct start, end, length, days or dates of one of the shifts.");
    }

    @Test
    void reportsAnExtraShiftThatOverlapsThePattern() {
        folder.replace("plant.yaml", "dates: [2027-03-06]", "dates: [2027-03-05, 2027-03-06]");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.OVERLAPPING_SHIFTS);
        assertThat(fault.field()).isEqualTo("/shifts/extra/saturday");
    }

    @Test
    void reportsAChangeOfPolymerThatNeitherPurgeNorCompoundCovers() {
        folder.replace("plant.yaml", "      darker: {darker_by: [0, 1, 2, 3], residual: 3 %, dead_zone: 1.0}\n", "")
                .replace("plant.yaml", "from_colour: {RED: 1.3}", "from_colour: {}")
                .replace("plant.yaml", "compound_hold_ups: 1.5", "compound_hold_ups: 0");

        assertThat(folder.faults())
                .filteredOn(fault -> fault.kind() == FaultKind.UNKNOWN_PURGE)
                .extracting(Fault::value)
                .anyMatch(pair -> pair.startsWith("PLA NAT to PETG BLK"));
    }

    @Test
    void reportsAChangeoverThatNothingCovers() {
        folder.replace("plant.yaml", "      darker: {darker_by: [0, 1, 2, 3], residual: 3 %, dead_zone: 1.0}\n", "")
                .replace("plant.yaml", "from_colour: {RED: 1.3}", "from_colour: {}")
                .replace("orders.csv", "A-2,PETG", "A-2,PLA");

        List<Fault> faults = folder.faults();

        assertThat(faults).extracting(Fault::kind).containsOnly(FaultKind.UNKNOWN_PURGE);
        assertThat(faults)
                .extracting(Fault::value)
                .containsExactly("PLA NAT to BLK on L1, L2", "PLA RED to BLK on L1, L2");
        assertThat(faults.get(0).text())
                .isEqualTo(folder.at("plant.yaml", "changeover:")
                        + ": /changeover = PLA NAT to BLK on L1, L2. Must have a row in the changeovers file,"
                        + " a purge_estimate, or a class step in purge_formula that covers it.\n"
                        + "  Mend: measure it and add a row, or add purge_estimate or the class step.");
    }

    @Test
    void countsTheChangeoversThatItDoesNotList() {
        StringBuilder colours = new StringBuilder();
        StringBuilder orders = new StringBuilder();
        for (int i = 0; i < 6; i++) {
            colours.append("C" + i + ",Colour,50,0,0,3,1,3,PLA\n");
            orders.append("B-" + i + ",PLA,C" + i + ",1.75,1,10,10,2027-03-01,2027-03-05,B,Export F,L2\n");
        }
        folder.append("colours.csv", colours.toString())
                .append("orders.csv", orders.toString())
                .replace("plant.yaml", "darker_by: [0, 1, 2, 3]", "darker_by: [3]");

        List<Fault> faults = folder.faults("/changeover/purge_estimate=null");

        int pairsOfSevenColoursOfClassThree = 7 * 6;
        int pairsToBlack = 7;
        int pairsFromNaturalAtTheEndOfAWeek = 7;
        assertThat(faults).hasSize(21);
        assertThat(faults.get(20).value())
                .isEqualTo(
                        "and " + (pairsOfSevenColoursOfClassThree + pairsToBlack + pairsFromNaturalAtTheEndOfAWeek - 20)
                                + " more pairs");
    }

    @Test
    void asksForOrdersWhenThereAreLines() {
        folder.replace("plant.yaml", "  orders: orders.csv\n", "")
                .replace("plant.yaml", "      - {order: A-1, spools: 5, age: 2 h}\n", "")
                .replace(
                        "plant.yaml",
                        "given sequence\n  sequence:\n    L1: [A-2, A-1]\n    L2: [A-3]",
                        "lightest next");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.MISSING_VALUE);
        assertThat(fault.text()).contains("/files = (not given). Must name a file of orders with at least one row");
    }

    @Test
    void asksForACartonForEverySizeOrdered() {
        folder.replace("plant.yaml", "  - {spool: 2.3 kg, spools: 4}\n", "");

        assertThat(folder.onlyFault().text())
                .endsWith("/cartons = no carton for spools of 2.3 kg."
                        + " Must have an entry for every spool size that is ordered.\n"
                        + "  Mend: add {spool: 2.3 kg, spools: COUNT}.");
    }

    @Test
    void refusesAStartThatTheClocksSkip() {
        folder.replace("plant.yaml", "start: 2027-03-01 06:00", "start: 2027-03-28 02:30");

        assertThat(folder.faults()).anySatisfy(fault -> assertThat(fault.text())
                .contains("/time/start = 2027-03-28 02:30. Must be a time that the clocks in Europe/Berlin show"));
    }
}
