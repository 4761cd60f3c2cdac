package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class StudyCommandTest {
    private static final String SMALL = "../scenarios/two-lines";
    private static final String JOURNAL = "study.journal";

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("results");
    }

    private List<String> call(String... more) {
        List<String> arguments =
                new ArrayList<>(List.of("study", SMALL, "--set=/time/length=2 days", "--out=" + out()));
        arguments.addAll(List.of(more));
        return arguments;
    }

    private Called study(String... more) {
        return Called.with(call(more).toArray(String[]::new));
    }

    private static Map<String, String> contents(Path of) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.list(of)) {
            for (Path file : files.toList()) {
                contents.put(
                        file.getFileName().toString(),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }

    /** The rate of a line decides; the price of cartons does not, and both of its points are the best. */
    @Test
    void tellsTheBestPointsFromTheOthers() throws IOException {
        Called called = study("--vary=/lines/L2/rate=20..44 kg/h:2", "--vary=/cartons_per_pallet=20,40");

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isEqualTo(ExitCode.OK);
        assertThat(called.out())
                .contains("4 points (grid), 20 replications each")
                .contains("A  /lines/L2/rate: 20 kg/h, 44 kg/h")
                .contains("*     3 44 kg/h  20")
                .contains("=     4 44 kg/h  40")
                .contains("one of these 2");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 100);
        List<String> rows = Files.readAllLines(out().resolve("points.csv"));
        assertThat(rows.get(0)).isEqualTo("point,/lines/L2/rate,/cartons_per_pallet,measure,mean,half_width,n");
        assertThat(rows.get(1)).matches("1,20 kg/h,20,good_spools_per_week,\\d+(\\.\\d+)?,\\d+(\\.\\d+)?,20");
        assertThat(Files.readString(out().resolve("summary.json")))
                .contains("\"points_not_told_from_best\" : [\n      3,\n      4\n    ]");
        assertThat(out().resolve("study.png")).isNotEmptyFile();
    }

    /** A point is what the run of the same scenario with the same seed is. */
    @Test
    void givesForAPointWhatARunOfItGives() throws IOException {
        study("--vary=/lines/L2/rate=20 kg/h,30 kg/h", "--replications=3", "--no-charts");
        Path run = folder.resolve("run");
        Called.with(
                "run",
                SMALL,
                "--set=/time/length=2 days",
                "--set=/lines/L2/rate=30 kg/h",
                "--replications=3",
                "--no-charts",
                "--out=" + run);

        String scrap = Files.readAllLines(out().resolve("points.csv")).stream()
                .filter(row -> row.startsWith("2,30 kg/h,scrap_pct,"))
                .findFirst()
                .orElseThrow();
        assertThat(Files.readString(run.resolve("summary.json")))
                .containsPattern("\"scrap_pct_of_fed\" : \\{\\s+\"mean\" : " + scrap.split(",")[3] + ",");
    }

    @Test
    void goesOnAfterAKillAndEndsByteForByteTheSame() throws IOException, InterruptedException {
        String[] factors = {
            "--vary=/lines/L2/rate=20..44 kg/h:30", "--vary=/cartons_per_pallet=20,40", "--replications=8"
        };
        assertThat(study(factors).code()).isEqualTo(ExitCode.OK);
        Map<String, String> whole = contents(out());
        Files.move(out(), folder.resolve("whole"));

        killWithPointsDone(factors);
        long linesAtKill = Files.readAllLines(out().resolve(JOURNAL)).size();
        Files.writeString(out().resolve(JOURNAL), "point\t59\t1.0 2.", StandardOpenOption.APPEND);
        Called resumed = study(factors);

        assertThat(linesAtKill).isLessThan(whole.get(JOURNAL).lines().count());
        assertThat(resumed.err()).isEmpty();
        assertThat(resumed.out()).contains("of 60 points were finished before.");
        assertThat(contents(out())).isEqualTo(whole);
    }

    private void killWithPointsDone(String... factors) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Spoolyard.class.getName()));
        command.addAll(call(factors));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            while (process.isAlive() && !hasPoints()) {
                process.waitFor(5, TimeUnit.MILLISECONDS);
            }
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.waitFor()).isNotZero();
    }

    private boolean hasPoints() throws IOException {
        Path journal = out().resolve(JOURNAL);
        return Files.exists(journal) && Files.readString(journal).contains("\npoint\t2\t");
    }

    @Test
    void refusesThePointsOfAnotherStudyUnlessFresh() throws IOException {
        String factor = "--vary=/lines/L2/rate=20 kg/h,30 kg/h";
        study(factor, "--replications=2", "--no-charts");

        Called other = study("--vary=/lines/L2/rate=20 kg/h,31 kg/h", "--replications=2", "--seed=2", "--no-charts");
        Called fresh = study(
                "--vary=/lines/L2/rate=20 kg/h,31 kg/h", "--replications=2", "--seed=2", "--no-charts", "--fresh");

        assertThat(other.code()).isEqualTo(ExitCode.INPUT);
        assertThat(other.err())
                .contains("Holds the points of another study; not the same: scenario and factors, seed.")
                .contains("--fresh");
        assertThat(fresh.code()).isEqualTo(ExitCode.OK);
        assertThat(Files.readString(out().resolve("points.csv"))).contains("2,31 kg/h,");
    }

    @Test
    void refusesADamagedJournal() throws IOException {
        String[] study = {"--vary=/lines/L2/rate=20 kg/h,30 kg/h", "--replications=2", "--no-charts"};
        study(study);
        Path journal = out().resolve(JOURNAL);
        Files.writeString(journal, Files.readString(journal).replaceFirst("point\t0\t.", "point\t0\t9"));

        Called called = study(study);

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains("of its study.journal is damaged.");
    }

    @Test
    void tellsAllFaultsOfTheFactorsAtOnce() {
        Called called = study(
                "--vary=lines/L2/rate=20 kg/h,30 kg/h",
                "--vary=/lines/L1/rate=20 kg/h",
                "--vary=/lines/L2/rate=20 m..30 kg/h",
                "--vary=/lines/L1/accumulator=60 m..40 m",
                "--vary=/lines/L2/accumulator=40 m,60 m",
                "--vary=/lines/L2/accumulator=80 m,90 m");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err())
                .contains("Must be a JSON Pointer, an equals sign and values.")
                .contains("/lines/L1/rate = 20 kg/h. Must be two values or more")
                .contains("Must have the same unit at both ends.")
                .contains("Must begin below its end.")
                .contains("Must not be varied twice")
                .contains("factors = 6. Must be at most 4.")
                .contains("6 faults.");
    }

    @Test
    void tellsAllFaultsOfAllPointsBeforeTheFirstRun() {
        Called called = study(
                "--vary=/lines/L1/sped=1 m,2 m",
                "--vary=/lines/L2/rate=30 kg/h,9999 kg/h,50 m",
                "--vary=/lines/L2/soak=20 min,30 min");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.out()).isEmpty();
        assertThat(called.err())
                .contains(
                        "--vary: /lines/L1/sped = 1 m, 2 m. At point 1 (1 m; 30 kg/h; 20 min) and 11 more: The key is unknown.")
                .contains(
                        "--vary: /lines/L2/rate = 9999 kg/h. At point 3 (1 m; 9999 kg/h; 20 min) and 3 more: Must be > 0")
                .contains("--vary: /lines/L2/rate = 50 m. At point 5 ");
        assertThat(out()).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/lines/L2/accumulator=-5 m..10 m:4 | = -5 m. At point 1 (-5 m): Must be >= 0 m and <= 5000 m.",
                "/lines/L2/accumulator=60..120:3 | = 60, 90, 120. At point 1 (60) and 2 more: Must be a length in m",
                "/lines/L2/winder/max_speed=0..200 m/min:3 | = 0 m/min. At point 1 (0 m/min): Must be > 0 m/min",
                "/lines/L2/strands=2.5,1 | = 2.5. At point 1 (2.5): Must be a whole number >= 1",
                "/lines/L2/winding_defects=0.5 %,140 % | = 140 %. At point 2 (140 %): Must be >= 0"
            })
    void tellsAValueOutsideItsFieldsRange(String vary, String message) {
        Called called = study("--vary=" + vary);

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).startsWith("--vary: /lines/L2/").contains(message, "Mend: ");
        assertThat(called.err()).endsWith("\n1 fault. Nothing was run or written.\n");
        assertThat(out()).doesNotExist();
    }

    @Test
    void leavesItsFinishedPointsToNoOtherCommand() throws IOException {
        String[] factor = {"--vary=/lines/L2/rate=20..44 kg/h:2", "--replications=2"};
        study(factor);
        Path journal = out().resolve(JOURNAL);
        List<String> lines = Files.readAllLines(journal);
        String withoutLast = String.join("\n", lines.subList(0, lines.size() - 1)) + "\n";
        for (Path file : contents(out()).keySet().stream().map(out()::resolve).toList()) {
            Files.delete(file);
        }
        Files.writeString(journal, withoutLast);
        String[] run = {"run", SMALL, "--set=/time/length=1 days", "--replications=2", "--out=" + out()};

        Called refused = Called.with(run);

        assertThat(refused.code()).isEqualTo(ExitCode.INPUT);
        assertThat(refused.err())
                .contains("Holds the finished points of a study that was stopped or is at work.")
                .contains("Mend: give another folder with --out; or let the same spoolyard study end first");
        assertThat(Files.readString(journal)).isEqualTo(withoutLast);
        assertThat(study(factor).out()).contains("1 of 2 points were finished before.");
        assertThat(Called.with(run).code()).isEqualTo(ExitCode.OK);
    }

    @Test
    void tellsAPointerIntoNothingAsOneFault() {
        Called called = study("--vary=/lines/L9/rate=10..18 kg/h:3", "--vary=/lines/L2/rate=20 kg/h,30 kg/h");

        assertThat(called.err())
                .contains(
                        "--vary: /lines/L9/rate = 10 kg/h, 14 kg/h, 18 kg/h. At point 1 (10 kg/h; 20 kg/h) and 5 more: "
                                + "Must lead to a value of the scenario; there is nothing on the way to it.")
                .contains("\n1 fault.");
    }

    @Test
    void refusesToSeekTheCheapestPointWithoutCosts() {
        Called called = study("--vary=/lines/L2/rate=20 kg/h,30 kg/h", "--measure=cost_per_good_spool");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains("the scenario has no costs.");
    }

    @Test
    void asksBeforeManyPoints() {
        Called many = study("--vary=/lines/L2/rate=20..44 kg/h:50", "--vary=/lines/L1/rate=10..18 kg/h:50");
        Called range = study("--vary=/lines/L2/rate=20..44 kg/h");
        Called pointless = study("--vary=/lines/L2/rate=20..44 kg/h", "--design=sobol");

        assertThat(many.err())
                .contains("grid of 2500 points. That may take long.")
                .contains("--yes");
        assertThat(range.err()).contains("A grid must be told how many values of the range it takes.");
        assertThat(pointless.err()).contains("Must come with a number of points.");
    }

    @Test
    void spreadsPointsOverRangesAndLists() throws IOException {
        Called sobol = study(
                "--design=sobol",
                "--points=8",
                "--replications=2",
                "--vary=/lines/L2/rate=20 kg/h..44 kg/h",
                "--vary=/lines/L2/overflow=waste,stop,easy={slow: {from_level: 80 %, minimum_speed: 60 %, scrap: 30 %}}",
                "--vary=/cartons_per_pallet=20..24");

        assertThat(sobol.err()).isEmpty();
        assertThat(Files.readAllLines(out().resolve("points.csv")))
                .anyMatch(row -> row.startsWith("1,20 kg/h,waste,20,"))
                .anyMatch(row -> row.startsWith("2,32 kg/h,stop,22,"))
                .anyMatch(row -> row.startsWith("3,38 kg/h,waste,23,"))
                .anyMatch(row -> row.startsWith("4,26 kg/h,easy,21,"));
    }
}
