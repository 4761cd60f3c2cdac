package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spoolyard.analysis.purge.Calibration;
import spoolyard.analysis.report.FloorPages;
import spoolyard.analysis.report.OrdersAtRisk;
import spoolyard.analysis.report.PlanChart;
import spoolyard.analysis.report.PlanFiles;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.core.colour.Viewing;
import spoolyard.scenarios.Scenario;

/**
 * Writes a plan into a folder: as a table, as a scenario that runs it, as a picture and as pages for the floor.
 * Immutable.
 *
 * @param folder where; made if it is not there
 * @param scenario what was planned
 * @param path where that was read from
 */
record PlanFolder(Path folder, Scenario scenario, Path path) {
    /**
     * Looks whether it may be written, before any work is done.
     *
     * @throws InputException if it is a file, or a file of the scenario stands where the plan is to be
     */
    void check() throws InputException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new InputException("--out = " + folder, "Must be a folder.", "give the name of a folder");
        }
        List<Path> own = Stream.of("plan.csv", "plan.yaml").map(this::absolute).toList();
        for (String file : scenario.info().files()) {
            if (own.contains(Path.of(file).toAbsolutePath().normalize())) {
                throw new InputException(
                        "--out = " + folder,
                        "Must not be the folder of " + file + ", which the scenario is read from.",
                        "give the name of another folder");
            }
        }
    }

    private Path absolute(String name) {
        return folder.resolve(name).toAbsolutePath().normalize();
    }

    /**
     * Writes all that is known before it is simulated; what is there is replaced, and what was simulated of another plan goes.
     *
     * @param plan the plan
     * @param console hears of a picture that cannot be drawn
     * @throws IOException if it cannot be written
     */
    void write(PlanFigures plan, Console console) throws IOException {
        Interruption end = Interruption.waits();
        try {
            writeAll(plan, console);
        } finally {
            end.close();
        }
    }

    private void writeAll(PlanFigures plan, Console console) throws IOException {
        PlantClock clock = new PlantClock(scenario.info().start());
        PlanFiles files = new PlanFiles(plan, clock);
        Files.deleteIfExists(risks());
        OutputFile.write(folder.resolve("plan.csv"), files.table());
        OutputFile.write(folder.resolve("plan.yaml"), PlanFiles.variation(folder, path, "plan.csv"));
        byte[] picture = Drawing.bytes(() -> PlanChart.png(plan, clock, viewing()), console.err());
        if (picture.length > 0) {
            OutputFile.write(folder.resolve("plan.png"), picture);
        }
        for (Map.Entry<String, String> page :
                new FloorPages(plan, clock, viewing()).byFile().entrySet()) {
            OutputFile.write(folder.resolve("floor").resolve(page.getKey()), page.getValue());
        }
    }

    /**
     * Adds what its simulation shows.
     *
     * @param risks of this plan
     * @throws IOException if it cannot be written
     */
    void add(OrdersAtRisk risks) throws IOException {
        Interruption end = Interruption.waits();
        try {
            OutputFile.write(risks(), risks.csv());
        } finally {
            end.close();
        }
    }

    private Path risks() {
        return folder.resolve(OrdersAtRisk.FILE);
    }

    /** Tells where the plan is. */
    void tell(Console console) {
        console.out()
                .println("Plan in " + folder.resolve("plan.csv") + "; run it with: spoolyard run "
                        + NewCommand.typed(folder.resolve("plan.yaml")) + settings());
    }

    /** What was set for the plan must be set for its run; its sequence stands in its file. */
    private String settings() {
        return scenario.info().sets().stream()
                .filter(set -> !set.matches("(?s)/orders/(rule|sequence)=.*"))
                .map(set -> " --set \"" + set + "\"")
                .collect(Collectors.joining());
    }

    private Viewing viewing() {
        return scenario.purge()
                .estimate()
                .orElse(Calibration.USUAL)
                .model()
                .looks()
                .viewing();
    }
}
