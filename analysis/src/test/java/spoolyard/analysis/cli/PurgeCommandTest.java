package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PurgeCommandTest {
    private static final String ORRENVALE =
            Path.of("..", "scenarios", "orrenvale").toString();
    private static final String BY_COLOUR =
            Path.of("..", "scenarios", "orrenvale-by-colour").toString();

    @TempDir
    private Path folder;

    @Test
    void showsAllLinesAndTheTableOfTheFirst() {
        Called called = Called.with("purge", BY_COLOUR);

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isZero();
        assertThat(called.out())
                .contains("\nL5 PLA ")
                .contains("L2, PLA: purge from the row to the column, kg")
                .contains("552 pairs: 2 measured, ")
                .contains("rank correlation with light to dark 0.9");
        // measured: 9.1 kg from black to white
        assertThat(called.out()
                        .lines()
                        .filter(line -> line.startsWith("BLK "))
                        .findFirst()
                        .orElseThrow())
                .contains("  9.1m");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 110);
    }

    @Test
    void showsOneLineInMinutesAndMetres() {
        Called minutes = Called.with("purge", ORRENVALE, "--line=L7", "--polymer=PLA", "--in=minutes");
        Called metres = Called.with("purge", ORRENVALE, "--line=L7", "--polymer=PLA", "--in=metres");

        // 8.9 kg at 36 kg/h; 4.45 kg of each of two strands of 2.98255 g/m
        assertThat(minutes.out())
                .contains("purge from the row to the column, minutes")
                .contains(" 15m");
        assertThat(metres.out()).contains("metres of each strand").contains("1492m");
    }

    @Test
    void drawsTheMap() throws IOException {
        Path file = folder.resolve("new/purge.png");

        Called called = Called.with("purge", BY_COLOUR, "--line=L5", "--picture=" + file);

        assertThat(called.code()).isZero();
        assertThat(called.out()).endsWith("Picture in " + file + "\n");
        assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(1280);
    }

    /** What it writes is a changeovers file: a copy of the plant that uses it purges the same on every pair. */
    @Test
    void writesATableThatTheScenarioTakes() throws IOException {
        Path file = folder.resolve("changeovers.csv");
        Path again = folder.resolve("again.csv");

        Called first = Called.with("purge", BY_COLOUR, "--csv=" + file);
        Called second =
                Called.with("purge", BY_COLOUR, "--csv=" + again, "--set=/files/changeovers=" + file.toAbsolutePath());

        assertThat(first.code()).isZero();
        assertThat(second.err()).isEmpty();
        assertThat(Files.readString(file)).contains("\nL2,PLA,BLK,WHT,9.1,30.33333,3051.081,measured\n");
        assertThat(purges(again)).hasSizeGreaterThan(4000).isEqualTo(purges(file));
    }

    /** Without minutes and metres, which follow from the rounded kilograms. */
    private static List<String> purges(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .map(row -> row.replaceAll(",[^,]*,[^,]*,([a-z]+)$", " $1"))
                .toList();
    }

    @Test
    void calibratesTheEstimate() {
        Called called = Called.with("purge", BY_COLOUR, "--calibrate");

        assertThat(called.err()).isEmpty();
        assertThat(called.out())
                .contains("Calibration on 10 measured changeovers", "  volume           1.", "95 % interval")
                .contains("changeovers.csv:10      L7 PLA RED to YEL")
                .contains("  mixing_exponent: 0.");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 110);
    }

    @Test
    void calibratesAPlantThatHasNoEstimateYet() {
        Called called = Called.with("purge", ORRENVALE, "--calibrate");

        assertThat(called.out())
                .contains("under purge_estimate, which this scenario does not have yet:\n  measured_under: D65 10°\n"
                        + "  washout: {plug_share: 40 %}\n  volume: 1.810\n");
    }

    /** The variation is shipped with what a calibration on its own rows finds. */
    @Test
    void theShippedEstimateIsCalibrated() throws IOException {
        String shipped = Files.readString(Path.of(BY_COLOUR, "plant.yaml"));

        List<String> found = Called.with("purge", BY_COLOUR, "--calibrate")
                .out()
                .lines()
                .filter(line -> line.matches("  (volume|mixing_exponent): .*"))
                .map(String::strip)
                .toList();

        assertThat(found).hasSize(2).allMatch(shipped::contains);
    }

    @Test
    void sayWhatIsWrongWithTheCall() {
        assertFault("--line = L9. Must be a line of this plant: L1, L2,", "purge", ORRENVALE, "--line=L9");
        assertFault("--polymer = PVC. Must be a polymer of this plant: PLA,", "purge", ORRENVALE, "--polymer=PVC");
        assertFault("--line = L5, --polymer = PA. Must be", "purge", ORRENVALE, "--line=L5", "--polymer=PA");
        assertFault("--in = lbs. Must be kg, minutes or metres.", "purge", ORRENVALE, "--in=lbs");
        assertFault("--csv = " + folder + ". Must be the name of a file.", "purge", ORRENVALE, "--csv=" + folder);
        assertFault(
                "--calibrate: 0 of 0 rows can be used. Must have at least 5 measured rows",
                "purge",
                Path.of("..", "scenarios", "two-lines").toString(),
                "--calibrate");
    }

    private static void assertFault(String message, String... arguments) {
        Called called = Called.with(arguments);

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).startsWith(message).contains("\n  Mend: ");
    }
}
