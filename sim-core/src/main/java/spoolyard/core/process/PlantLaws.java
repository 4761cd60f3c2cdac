package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.Winder;
import spoolyard.core.random.InverseTables;

/** Finds the laws of a plant whose inversion is costly, so that its replications share the tables. */
public final class PlantLaws {
    private PlantLaws() {}

    /**
     * Builds the tables.
     *
     * @param plant the plant
     * @return tables for its gamma laws. Cost: some milliseconds for each different one
     */
    public static InverseTables tables(Plant plant) {
        List<Law> laws = new ArrayList<>();
        plant.lines().forEach(line -> addLine(laws, line));
        ChangeoverRules rules = plant.changeovers();
        rules.colourSteps().forEach(step -> laws.add(step.durationS()));
        rules.polymerSteps().forEach(step -> laws.add(step.durationS()));
        rules.diameterSteps().forEach(step -> laws.add(step.durationS()));
        laws.add(rules.approval().durationS());
        plant.finishing().stations().forEach(station -> addStation(laws, station));
        plant.finishing().inbound().forEach(source -> laws.add(source.intervalS()));
        addQuality(laws, plant.finishing().quality());
        plant.materials().stocks().forEach(item -> item.reorder().ifPresent(rule -> laws.add(rule.leadTimeS())));
        return InverseTables.of(laws);
    }

    private static void addLine(List<Law> laws, Line line) {
        if (line.winder() instanceof Winder.Manual manual) {
            laws.addAll(List.of(manual.stopTimeS(), manual.finishTimeS()));
        } else if (line.winder() instanceof Winder.TwoPosition two) {
            laws.addAll(List.of(two.transferTimeS(), two.unloadTimeS()));
        }
        StartStop how = line.startStop();
        if (how.heatUp() instanceof HeatUp.Timed timed) {
            laws.add(timed.timeS());
        }
        laws.addAll(List.of(how.soakS(), how.threadUpS(), how.stabiliseS(), how.shutDownS()));
        line.stoppages().forEach(cause -> addStoppage(laws, cause));
        line.gauge().ifPresent(gauge -> gauge.excursions()
                .forEach(each -> laws.addAll(List.of(each.untilNextS(), each.lengthS()))));
        line.supply().ifPresent(supply -> laws.addAll(List.of(supply.loadS(), supply.cleanS())));
    }

    private static void addQuality(List<Law> laws, QualityRules rules) {
        rules.exposure().ifPresent(exposure -> laws.add(exposure.oven().dryingS()));
        rules.lab().ifPresent(lab -> {
            lab.tests().forEach(test -> laws.add(test.takesS()));
            laws.add(lab.refusal().sorting().takesS());
            laws.add(lab.refusal().respooling().takesS());
        });
    }

    private static void addStation(List<Law> laws, FinishingStation station) {
        station.cycles().forEach(cycle -> laws.add(cycle.timeS()));
        station.stoppages().forEach(cause -> addStoppage(laws, cause));
    }

    private static void addStoppage(List<Law> laws, Stoppage cause) {
        laws.addAll(List.of(cause.untilNext(), cause.durationS()));
        cause.stabiliseS().ifPresent(laws::add);
    }
}
