package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;

final class FileFaultsTest {
    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    @BeforeEach
    void copy() {
        folder = ScenarioFolder.everything(parent);
    }

    @Test
    void reportsAMissingScenarioFile() {
        folder.delete("plant.yaml");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.MISSING_FILE);
        assertThat(fault.text())
                .isEqualTo(folder.shown("plant.yaml") + ": file = " + folder.shown("plant.yaml")
                        + ". Must be a file that can be read; it is not there.\n"
                        + "  Mend: correct the name, or put the file there.");
    }

    @Test
    void reportsAMissingTableWhereItIsNamed() {
        folder.delete("orders.csv");

        Fault fault = folder.faults().get(0);

        assertThat(fault.kind()).isEqualTo(FaultKind.MISSING_FILE);
        assertThat(fault.origin().where()).isEqualTo(folder.at("plant.yaml", "orders: orders.csv"));
        assertThat(fault.field()).isEqualTo("/files/orders");
    }

    @Test
    void refusesAFolderInPlaceOfATable() throws IOException {
        folder.delete("changeovers.csv");
        Files.createDirectory(folder.path().resolve("changeovers.csv"));

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.MISSING_FILE);
        assertThat(fault.allowed()).isEqualTo("Must be a file that can be read; it is not a plain file.");
    }

    @Test
    void reportsAnEmptyYamlFile() {
        folder.write("plant.yaml", "");

        assertThat(folder.onlyFault().text())
                .isEqualTo(folder.shown("plant.yaml") + ": file = (empty). Must have content.\n"
                        + "  Mend: fill it, or name another file.");
    }

    @Test
    void reportsAYamlFileOfCommentsOnly() {
        folder.write("plant.yaml", "# later\n");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.EMPTY_FILE);
        assertThat(fault.value()).isEqualTo("(only comments)");
    }

    @Test
    void reportsAnEmptyTable() {
        folder.write("changeovers.csv", "\n \n");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.EMPTY_FILE);
        assertThat(fault.file()).isEqualTo(folder.shown("changeovers.csv"));
    }

    @Test
    void refusesATableOfOneGigabyteWithoutReadingIt() throws IOException {
        stretch("orders.csv", 1L << 30);

        Fault fault = folder.faults().get(0);

        assertThat(fault.kind()).isEqualTo(FaultKind.FILE_TOO_LARGE);
        assertThat(fault.text())
                .isEqualTo(folder.shown("orders.csv") + ": file = 1073 MB. Must be at most 20 MB.\n"
                        + "  Mend: name the right file, or leave out what the scenario does not need.");
    }

    @Test
    void refusesAYamlFileOfOneGigabyteWithoutReadingIt() throws IOException {
        stretch("plant.yaml", 1L << 30);

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.FILE_TOO_LARGE);
        assertThat(fault.allowed()).isEqualTo("Must be at most 2 MB.");
    }

    /** Makes a sparse file, which takes no room on most file systems. */
    private void stretch(String file, long sizeBytes) throws IOException {
        try (RandomAccessFile stretched =
                new RandomAccessFile(folder.path().resolve(file).toFile(), "rw")) {
            stretched.setLength(sizeBytes);
        }
    }

    @Test
    void reportsTheLineOfAByteThatIsNotUtf8() {
        byte[] latin1 = folder.text("colours.csv").replace("Natural", "Natür").getBytes(StandardCharsets.ISO_8859_1);
        folder.write("colours.csv", latin1);

        Fault fault = folder.faults().get(0);

        assertThat(fault.kind()).isEqualTo(FaultKind.BAD_ENCODING);
        assertThat(fault.text())
                .isEqualTo(folder.shown("colours.csv") + ":2: file = byte 0xFC. Must be text in UTF-8.\n"
                        + "  Mend: save the file as UTF-8 (in a spreadsheet: \"CSV UTF-8\").");
    }

    @Test
    void refusesUtf16WithAndWithoutAMark() {
        String text = folder.text("plant.yaml");

        folder.write("plant.yaml", text.getBytes(StandardCharsets.UTF_16));
        Fault marked = folder.onlyFault();
        folder.write("plant.yaml", "spoolyard: 1\n".getBytes(StandardCharsets.UTF_16LE));
        Fault unmarked = folder.onlyFault();

        assertThat(marked.kind()).isEqualTo(FaultKind.BAD_ENCODING);
        assertThat(marked.value()).isEqualTo("byte 0xFE");
        assertThat(unmarked.kind()).isEqualTo(FaultKind.BAD_ENCODING);
        assertThat(unmarked.value()).isEqualTo("byte 0x00");
    }

    @Test
    void acceptsAByteOrderMarkInEveryFile() {
        Scenario plain = folder.read();
        for (String file : List.of("plant.yaml", "orders.csv", "colours.csv", "changeovers.csv")) {
            folder.write(file, "\uFEFF" + folder.text(file));
        }

        assertThat(folder.read().plant()).isEqualTo(plain.plant());
    }

    @Test
    void reportsBrokenYamlWithTheParsersReason() {
        folder.replace("plant.yaml", "    rate: 18 kg/h", "    rate: [18 kg/h");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.BAD_SYNTAX);
        assertThat(fault.origin().where()).isEqualTo(folder.at("plant.yaml", "polymers: [PLA, PETG]\n    hold_up"));
        assertThat(fault.text())
                .contains(" = not YAML. The parser says: expected ',' or ']'")
                .endsWith("near this line.");
    }

    @Test
    void refusesTabsAsIndentation() {
        folder.replace("plant.yaml", "  cycle: 7 days", "\tcycle: 7 days");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.BAD_SYNTAX);
        assertThat(fault.origin().where()).isEqualTo(folder.at("plant.yaml", "\tcycle"));
    }

    @Test
    void refusesASecondDocument() {
        int lines = (int) folder.text("plant.yaml").lines().count();
        folder.append("plant.yaml", "---\nname: another\n");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.BAD_SYNTAX);
        assertThat(fault.line()).isEqualTo(lines + 2);
        assertThat(fault.allowed()).isEqualTo("Must be one document.");
    }

    @Test
    void refusesAListAtTheTop() {
        folder.write("plant.yaml", "- a\n- b\n");

        assertThat(folder.onlyFault().text())
                .isEqualTo(folder.shown("plant.yaml")
                        + ":1: the whole file = (a list of 2). Must be a mapping of keys to values.\n"
                        + "  Mend: begin with spoolyard: 1, or with base: FOLDER.");
    }

    @Test
    void refusesAliasesInsteadOfFollowingThem() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 30; i++) {
            String before = "*a" + (i - 1) + ", ";
            bomb.append("a" + i + ": &a" + i + " [" + before.repeat(8) + "*a" + (i - 1) + "]\n");
        }
        folder.write("plant.yaml", bomb.toString());

        List<Fault> faults = folder.faults();

        assertThat(faults).filteredOn(f -> f.kind() == FaultKind.ALIAS).hasSize(30 + 29 * 9);
        assertThat(faults.get(0).text())
                .isEqualTo(folder.shown("plant.yaml")
                        + ":1: /a0 = &a0. YAML anchors (&), aliases (*) and tags (!) are not used in scenario files.\n"
                        + "  Mend: write the value out; what all lines share goes under every_line.");
    }

    @Test
    void refusesTags() {
        folder.replace("plant.yaml", "name: Everything", "name: !java.net.URL Everything");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.ALIAS);
        assertThat(fault.value()).isEqualTo("!java.net.URL");
    }

    @Test
    void refusesNestingBeyondAnyNeed() {
        folder.replace("plant.yaml", "name: Everything", "name: " + "[".repeat(5000) + "]".repeat(5000));

        assertThat(folder.faults()).anySatisfy(fault -> {
            assertThat(fault.kind()).isIn(FaultKind.TOO_DEEP, FaultKind.BAD_SYNTAX);
            assertThat(fault.line()).isEqualTo(3);
        });
    }

    @Test
    void reportsNestingOfSixtyFive() {
        folder.replace("plant.yaml", "name: Everything", "name: " + "[".repeat(64) + "]".repeat(64));

        assertThat(folder.faults()).anySatisfy(fault -> {
            assertThat(fault.kind()).isEqualTo(FaultKind.TOO_DEEP);
            assertThat(fault.line()).isEqualTo(3);
            assertThat(fault.allowed()).isEqualTo("Must be nested at most 64 deep.");
        });
    }

    @Test
    void changesItsHashWithAnyByteAndNotWithItsPlace() {
        String hash = folder.read().info().contentHash();
        ScenarioFolder elsewhere = ScenarioFolder.everything(parent.resolve("elsewhere"));

        assertThat(elsewhere.read().info().contentHash()).isEqualTo(hash).hasSize(64);
        assertThat(elsewhere.append("orders.csv", "\n").read().info().contentHash())
                .isNotEqualTo(hash);
        assertThat(folder.read("/lines/L1/accumulator=60 m").info().contentHash())
                .isNotEqualTo(hash);
    }
}
