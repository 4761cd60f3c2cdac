package spoolyard.scenarios.capacity;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Exposure;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.TaskKind;

/** Every piece of work in a plant that calls for a person, in the order of a scenario's parts. */
final class CrewNeeds {
    private final List<Need> needs = new ArrayList<>();

    private CrewNeeds() {}

    /**
     * A piece of work.
     *
     * @param crew who may do it
     * @param what its kind and name
     * @param path keys that lead to its crew
     */
    record Need(CrewNeed crew, String what, List<String> path) {}

    /** All but those that need nobody. */
    static List<Need> of(Plant plant) {
        CrewNeeds found = new CrewNeeds();
        plant.lines().forEach(found::ofLine);
        found.ofChangeover(plant.changeovers());
        plant.finishing().stations().forEach(found::ofStation);
        plant.finishing().quality().lab().ifPresent(found::ofLab);
        plant.finishing()
                .quality()
                .exposure()
                .map(Exposure::oven)
                .ifPresent(oven ->
                        found.add(oven.crew(), TaskKind.REWORK.label() + " in the oven", "exposure", "oven", "crew"));
        return List.copyOf(found.needs);
    }

    private void ofLine(Line line) {
        add(line.winder().crew(), TaskKind.SPOOL_SWAP.label(), "lines", line.name(), "winder", "crew");
        String startStop = TaskKind.THREAD_UP.label() + " and " + TaskKind.SHUT_DOWN.label();
        add(line.startStop().crew(), startStop, "lines", line.name(), "line_crew");
        line.supply()
                .ifPresent(supply -> add(
                        supply.crew(),
                        "loading and cleaning of " + TaskKind.MATERIAL.label(),
                        "lines",
                        line.name(),
                        "material",
                        "crew"));
        ofStoppages("lines", line.name(), line.stoppages());
    }

    private void ofStation(FinishingStation station) {
        add(station.crew(), station.kind().label(), "finishing", station.name(), "crew");
        ofStoppages("finishing", station.name(), station.stoppages());
    }

    private void ofStoppages(String part, String name, List<Stoppage> stoppages) {
        stoppages.forEach(each -> add(
                each.crew(),
                TaskKind.STOPPAGE.label() + " " + each.name(),
                part,
                name,
                "stoppages",
                each.name(),
                "crew"));
    }

    private void ofChangeover(ChangeoverRules rules) {
        ofSteps("colour_steps", rules.colourSteps());
        ofSteps("polymer_steps", rules.polymerSteps());
        ofSteps("diameter_steps", rules.diameterSteps());
        add(rules.approval().crew(), TaskKind.APPROVAL.label() + " of a colour", "changeover", "approval", "crew");
    }

    private void ofSteps(String key, List<ChangeoverRules.SetUpStep> steps) {
        steps.forEach(step ->
                add(step.crew(), TaskKind.SET_UP.label() + " " + step.name(), "changeover", key, step.name(), "crew"));
    }

    private void ofLab(Lab lab) {
        lab.tests()
                .forEach(test -> add(
                        test.crew(),
                        TaskKind.LAB_TEST.label() + " " + test.name(),
                        "lab",
                        "tests",
                        test.name(),
                        "crew"));
        ofRefused("sort", lab.refusal().sorting());
        ofRefused("re_spool", lab.refusal().respooling());
    }

    private void ofRefused(String key, Lab.Work work) {
        add(work.crew(), TaskKind.REWORK.label() + " " + key, "lab", "refused", key, "crew");
    }

    private void add(CrewNeed crew, String what, String... path) {
        if (!crew.isNobody()) {
            needs.add(new Need(crew, what, List.of(path)));
        }
    }
}
