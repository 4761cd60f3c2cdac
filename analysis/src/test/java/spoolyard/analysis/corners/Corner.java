package spoolyard.analysis.corners;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import spoolyard.analysis.experiment.Experiment;
import spoolyard.analysis.experiment.Progress;
import spoolyard.core.plant.Plant;
import spoolyard.core.process.PlantLaws;
import spoolyard.core.process.PlantRun;
import spoolyard.core.random.InverseTables;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

/** A scenario of the folder {@code corners} in the test resources, with single values set. Immutable. */
final class Corner {
    /** One seed for all corners, chosen before the first run. */
    static final long SEED = 20270301;

    private final String name;
    private final List<String> settings;

    private Corner(String name, List<String> settings) {
        this.name = name;
        this.settings = List.copyOf(settings);
    }

    static Corner of(String name) {
        return new Corner(name, List.of());
    }

    /** The same with a value set by JSON Pointer, as {@code --set} does. */
    Corner with(String pointer, String yaml) {
        List<String> more = new ArrayList<>(settings);
        more.add(pointer + "=" + yaml);
        return new Corner(name, more);
    }

    /** One replication: enough where nothing is random. */
    RunResult run() {
        return replication(0, EventLog.SILENT);
    }

    /** One replication that tells what happens. */
    RunResult replication(int number, EventLog log) {
        return new PlantRun(plant(), SEED, number, log).run();
    }

    /** Independent replications. */
    List<RunResult> replications(int count) {
        Plant plant = plant();
        InverseTables tables = PlantLaws.tables(plant);
        return new Experiment(
                        number -> new PlantRun(plant, tables, SEED, number, EventLog.SILENT).run(),
                        count,
                        Runtime.getRuntime().availableProcessors())
                .run(run -> run, Progress.UNHEARD);
    }

    /** The plant as read. */
    Plant plant() {
        try {
            return ScenarioReader.read(folder(), settings).plant();
        } catch (ScenarioException faults) {
            throw new IllegalStateException("corner " + name + ": " + faults.getMessage(), faults);
        }
    }

    private Path folder() {
        try {
            return Path.of(Corner.class.getResource("/corners/" + name).toURI());
        } catch (URISyntaxException failure) {
            throw new IllegalArgumentException(name, failure);
        }
    }
}
