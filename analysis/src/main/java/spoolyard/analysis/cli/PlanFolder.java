package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import spoolyard.analysis.purge.Calibration;
import spoolyard.analysis.report.PlanChart;
import spoolyard.analysis.report.PlanFiles;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.core.colour.Viewing;
import spoolyard.scenarios.Scenario;

/**
 * Writes a plan into a folder: as a table, as a scenario that runs it and as a picture. Immutable.
 *
 * @param folder where; made if it is not there
 * @param scenario what was planned
 * @param path where that was read from
 */
record PlanFolder(Path folder, Scenario scenario, Path path) {
    /**
     * Writes all of it; what is there is replaced.
     *
     * @param plan the plan
     * @param console hears where it is
     * @throws IOException if it cannot be written
     */
    void write(PlanFigures plan, Console console) throws IOException {
        PlantClock clock = new PlantClock(scenario.info().start());
        PlanFiles files = new PlanFiles(plan, clock);
        Files.createDirectories(folder);
        files.writeTable(folder.resolve("plan.csv"));
        files.writeVariation(folder.resolve("plan.yaml"), path);
        byte[] picture = Drawing.bytes(() -> PlanChart.png(plan, clock, viewing()), console.err());
        if (picture.length > 0) {
            OutputFile.write(folder.resolve("plan.png"), picture);
        }
        console.out()
                .println("Plan in " + folder.resolve("plan.csv") + "; run it with: spoolyard run "
                        + NewCommand.typed(folder.resolve("plan.yaml")));
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
