package spoolyard.scenarios;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.scenarios.calendar.CrewWork;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.calendar.Roster;
import spoolyard.scenarios.calendar.ShiftPlan;
import spoolyard.scenarios.check.ShiftReader;
import spoolyard.scenarios.check.ShiftReader.DatedPlan;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.fault.Warning;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.ScenarioTree;
import spoolyard.scenarios.labour.LabourLaw;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;
import spoolyard.scenarios.shiftsystem.ShiftSystem;

/**
 * Who works when, in a scenario or in a shift system. Immutable.
 *
 * @param plan the shifts and who works them
 * @param clock start and end of the run
 * @param work of each crew, over whole turns
 * @param flags what somebody should have checked against the law
 */
public record ShiftRoster(ShiftPlan plan, PlantClock clock, List<CrewWork> work, List<Warning> flags) {
    /** Copies the lists. */
    public ShiftRoster {
        work = List.copyOf(work);
        flags = List.copyOf(flags);
    }

    /**
     * The roster of a shift system.
     *
     * @param system the system
     * @return over one whole turn, from a Monday on
     */
    public static ShiftRoster of(ShiftSystem system) {
        Reading reading = Reading.begin();
        Node.Mapping time = new Node.Mapping(
                Origin.ofFile(system.label()),
                Map.of("zone", text("UTC"), "start", text("2027-03-01 00:00"), "length", text("7 days")));
        Node.Mapping tree =
                new Node.Mapping(Origin.ofFile(system.label()), Map.of("time", time, "shifts", system.shifts()));
        DatedPlan plan = ShiftReader.read(tree, reading).orElseThrow();
        if (!reading.faults().isEmpty()) {
            throw new IllegalStateException(
                    system.label() + " is not sound: " + reading.faults().all());
        }
        return of(plan);
    }

    private static Node.Text text(String text) {
        return new Node.Text(Origin.ofFile("shift system"), text);
    }

    /**
     * The roster of a scenario.
     *
     * @param folderOrFile folder with a {@code plant.yaml}, or a YAML file
     * @param sets values that override those of the files
     * @return the roster; empty if the scenario has no shifts
     * @throws ScenarioException with every fault of the part {@code shifts} and of the files themselves
     */
    public static Optional<ShiftRoster> read(Path folderOrFile, List<String> sets) throws ScenarioException {
        Reading reading = Reading.begin();
        SourceFiles files = new SourceFiles(reading.faults());
        Optional<Node.Mapping> tree = new ScenarioTree(files, reading.faults()).load(folderOrFile, sets);
        Optional<DatedPlan> plan = tree.flatMap(found -> ShiftReader.read(found, reading));
        reading.faults().throwIfAny();
        return plan.map(ShiftRoster::of);
    }

    private static ShiftRoster of(DatedPlan dated) {
        List<CrewWork> work = Roster.of(dated.plan(), dated.clock());
        return new ShiftRoster(dated.plan(), dated.clock(), work, LabourLaw.flags(work));
    }
}
