package spoolyard.analysis.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.Trial;
import spoolyard.analysis.report.Alternative;
import spoolyard.analysis.report.Comparison;
import spoolyard.analysis.report.Measure;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.Provenance;
import spoolyard.analysis.report.Setting;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.ScenarioException;

/**
 * A base and its alternatives, read and found fit to be compared. Immutable.
 *
 * @param plants the base, then its alternatives
 */
record Contest(List<Alternative> plants) {
    /** Farther than any experiment has replications. */
    private static final int APART = 2_000_000;

    /** Copies the list. */
    Contest {
        plants = List.copyOf(plants);
    }

    /**
     * Reads all of them.
     *
     * @param base folder or file of the base
     * @param typed the alternatives as they were typed
     * @param settings values set over all
     * @param seed master seed
     * @return the contest
     * @throws ScenarioException with all faults of the first scenario that has any
     * @throws InputException if they cannot be compared
     */
    static Contest read(Path base, List<String> typed, List<String> settings, long seed)
            throws ScenarioException, InputException {
        if (typed.size() > Comparison.MOST_ALTERNATIVES) {
            throw new InputException(
                    "ALT: " + typed.size() + " alternatives",
                    "Must be at most " + Comparison.MOST_ALTERNATIVES + ".",
                    "leave some out");
        }
        List<Alternative> plants = new ArrayList<>();
        plants.add(alternative(
                new AlternativeArgument("", ScenarioArgument.nameOf(base), base, List.of()), settings, seed));
        for (String each : typed) {
            AlternativeArgument argument = AlternativeArgument.of(each, base);
            checkName(argument, plants);
            Alternative alternative = alternative(argument, settings, seed);
            check(argument, alternative, plants.get(0));
            plants.add(alternative);
        }
        return new Contest(plants);
    }

    /**
     * Observes the measures of each plant.
     *
     * @param plants the plants
     * @param simulator makes the replications
     * @return gives the measures of a plant in a replication
     */
    static Trial<double[]> trial(List<Alternative> plants, Simulator simulator) {
        List<Replicator> replicators = plants.stream()
                .map(plant ->
                        simulator.of(plant.setting().plant(), plant.provenance().masterSeed(), EventLog.SILENT))
                .toList();
        return (plant, replication) ->
                Measure.all(plants.get(plant).setting(), replicators.get(plant).replicate(replication));
    }

    /**
     * Observes the measures of each plant with luck of its own.
     *
     * @param plants the plants
     * @param simulator makes the replications
     * @return gives the measures of a plant in a replication; no two plants share one
     */
    static Trial<double[]> independentTrial(List<Alternative> plants, Simulator simulator) {
        Trial<double[]> common = trial(plants, simulator);
        return (plant, replication) -> common.observe(plant, plant * APART + replication);
    }

    private static Alternative alternative(AlternativeArgument argument, List<String> settings, long seed)
            throws ScenarioException {
        Scenario read = argument.read(settings);
        Setting setting =
                new Setting(read.plant(), new PlantClock(read.info().start()), RunCommand.labourFlags(read.warnings()));
        Provenance provenance = ScenarioArgument.provenance(argument.path(), read, seed);
        return new Alternative(argument.name(), provenance, setting);
    }

    private static void checkName(AlternativeArgument argument, List<Alternative> before) throws InputException {
        if (argument.name().isBlank()) {
            throw new InputException(
                    "ALT = " + argument.typed(), "Its name is blank.", "write a name before the first =");
        }
        if (before.stream().anyMatch(plant -> plant.name().equals(argument.name()))) {
            throw new InputException(
                    "ALT = " + argument.typed(),
                    "There is another of the name " + argument.name() + ". Names must differ.",
                    "write another name and = before it, such as other=" + argument.typed());
        }
    }

    private static void check(AlternativeArgument argument, Alternative alternative, Alternative base)
            throws InputException {
        if (!span(alternative).equals(span(base))) {
            throw new InputException(
                    "ALT = " + argument.typed(),
                    "Runs " + span(alternative) + ", the base " + span(base) + ". Must be the same time.",
                    "give all the same time, for example with --set \"/time/length=4 weeks\"");
        }
        if (!currency(alternative).equals(currency(base))) {
            throw new InputException(
                    "ALT = " + argument.typed(),
                    "Its costs are in " + currency(alternative).orElse("no currency") + ", those of the base in "
                            + currency(base).orElse("no currency") + ". Must be the same.",
                    "give both the same costs key, or neither");
        }
    }

    private static String span(Alternative plant) {
        PlantClock clock = plant.setting().clock();
        return clock.minute(0) + " to " + clock.minute(plant.setting().plant().horizonTicks()) + " ("
                + clock.start().getZone() + ")";
    }

    private static Optional<String> currency(Alternative plant) {
        return plant.setting().plant().economy().prices().map(Prices::currency);
    }
}
