package spoolyard.analysis.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.Trial;
import spoolyard.analysis.report.Measure;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.Setting;
import spoolyard.analysis.report.StudyJournal;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.PointScenarios;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.factor.Level;
import spoolyard.scenarios.fault.ScenarioException;

/**
 * Runs the points of a study that are not finished, a few at a time, so that no more plants than threads are in memory.
 *
 * @param scenarios reads the scenario of a point
 * @param points all points
 * @param hashes content hash of each when it was checked
 * @param simulator makes the replications of a plant
 * @param experiment seed, replications, threads
 */
record StudyRun(
        PointScenarios scenarios,
        List<List<Level>> points,
        List<String> hashes,
        Simulator simulator,
        StudyOptions experiment) {
    /**
     * Runs them.
     *
     * @param journal keeps each point as it is finished
     * @param progress hears of each replication of all points
     * @return a point each, in order; shape {@code [replication][measure]}
     * @throws ScenarioException if a scenario cannot be read any more
     * @throws InputException if a scenario has changed since it was checked
     * @throws IOException if the journal cannot be written
     */
    List<double[][]> run(StudyJournal journal, Progress progress)
            throws ScenarioException, InputException, IOException {
        SortedMap<Integer, double[][]> finished = journal.finished();
        List<Integer> open = new ArrayList<>();
        for (int point = 0; point < points.size(); point++) {
            if (!finished.containsKey(point)) {
                open.add(point);
            }
        }
        int threads = experiment.threads();
        for (int first = 0; first < open.size(); first += threads) {
            List<Integer> together = open.subList(first, Math.min(open.size(), first + threads));
            runTogether(together, journal, progress, points.size() - open.size() + first);
        }
        return List.copyOf(journal.finished().values());
    }

    private void runTogether(List<Integer> together, StudyJournal journal, Progress progress, int before)
            throws ScenarioException, InputException, IOException {
        List<Setting> settings = new ArrayList<>();
        for (int point : together) {
            settings.add(setting(point));
        }
        int replications = experiment.replications(points.size());
        List<List<double[]>> observed = new CommonNumbers<>(trial(settings), experiment.threads())
                .run(
                        together.size(),
                        0,
                        replications,
                        (done, total) -> progress.reached(before * replications + done, points.size() * replications));
        for (int i = 0; i < together.size(); i++) {
            int place = i;
            double[][] values = observed.stream().map(all -> all.get(place)).toArray(double[][]::new);
            journal.add(together.get(i), values);
        }
    }

    private Trial<double[]> trial(List<Setting> settings) {
        List<Replicator> replicators = settings.stream()
                .map(setting -> simulator.of(setting.plant(), experiment.seed(), EventLog.SILENT))
                .toList();
        return (plant, replication) ->
                Measure.all(settings.get(plant), replicators.get(plant).replicate(replication));
    }

    private Setting setting(int point) throws ScenarioException, InputException {
        Scenario read = scenarios.read(points.get(point));
        if (!read.info().contentHash().equals(hashes.get(point))) {
            throw new InputException(
                    "SCENARIO", "Its files changed while the study ran.", "run the study again with --fresh");
        }
        return new Setting(read.plant(), new PlantClock(read.info().start()));
    }
}
