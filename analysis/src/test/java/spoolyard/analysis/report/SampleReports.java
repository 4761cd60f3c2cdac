package spoolyard.analysis.report;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import spoolyard.analysis.experiment.Experiment;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.sample.PlausibleRuns;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.plant.Plant;

/** Reports made from plausible results. */
final class SampleReports {
    private SampleReports() {}

    static RunReport of(int lines, int weeks, int replications) {
        return of(SamplePlant.of(lines, weeks), replications);
    }

    static RunReport of(Plant plant, int replications) {
        return of(new Setting(plant, clock()), replications);
    }

    static RunReport of(Setting setting, int replications) {
        Plant plant = setting.plant();
        List<ReplicationSummary> summaries = new Experiment(new PlausibleRuns(plant, 1), replications, 2)
                .run(new Summariser(setting), Progress.UNHEARD);
        return RunReport.of(
                new Provenance("0.1.0", "sample", "sha256:" + "0".repeat(64), List.of("/lines/L1/rate=19 kg/h"), 1),
                setting,
                summaries);
    }

    static PlantClock clock() {
        return new PlantClock(ZonedDateTime.of(2027, 3, 1, 6, 0, 0, 0, ZoneId.of("Europe/Berlin")));
    }
}
