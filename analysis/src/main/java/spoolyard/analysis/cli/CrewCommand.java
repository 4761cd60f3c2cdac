package spoolyard.analysis.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.crew.CrewStudy;
import spoolyard.analysis.crew.CrewView;
import spoolyard.analysis.crew.Staffing;
import spoolyard.analysis.report.CrewViewChart;
import spoolyard.analysis.report.CrewViewTable;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Role;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.Nearest;
import spoolyard.scenarios.fault.ScenarioException;

/** Shows how many lines a person can look after. */
@Command(
        name = "crew",
        mixinStandardHelpOptions = true,
        header = "Show what more and fewer people at the winders give: machine interference.",
        description = {
            "",
            "Runs the plant with other numbers of people of a role in every shift, on the same random numbers, and sets"
                    + " the published curves for machine interference beside. docs/buffer.md",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard crew scenarios/orrenvale",
            "  spoolyard crew scenarios/orrenvale --role operator --from 2 --to 6 --picture crew.png --csv crew.csv",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class CrewCommand implements Callable<Integer> {
    private static final int MOST_PEOPLE = 100;
    private static final int FEWEST_REPLICATIONS = 2;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--role",
            paramLabel = "ROLE",
            description = "Whose number is changed. Default: the first role that changes spools.")
    private String roleName;

    @Option(names = "--from", paramLabel = "N", description = "Fewest people. Default: 1.")
    private int from = 1;

    @Option(names = "--to", paramLabel = "N", description = "Most people. Default: two more than there are.")
    private Integer to;

    @Mixin
    private ExperimentOptions experiment;

    @Mixin
    private TableOptions files;

    CrewCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        Staffing staffing = staffing(checked().plant());
        List<Integer> people = people(staffing);
        print(List.of(
                console.ink().title(staffing.plant().name()) + ": " + staffing.winders()
                        + " winders under more and fewer of the role " + staffing.roleName(),
                experiment.replications() + " replications of each of " + (people.size() + 1) + " plants, seed "
                        + experiment.seed() + ".",
                ""));
        CrewView view = new CrewStudy(
                        plant -> simulator.of(plant, experiment.seed(), EventLog.SILENT),
                        experiment.replications(),
                        experiment.threads())
                .run(staffing, people, experiment.progress(console));
        CrewViewTable table = new CrewViewTable(view);
        print(table.lines(console.ink()));
        print(files.write(table.csv(), new CrewViewChart(view)::png, console.err()));
        return ExitCode.OK;
    }

    private Scenario checked() throws InputException, IOException {
        OptionFaults faults = new OptionFaults();
        faults.check(() -> experiment.check(FEWEST_REPLICATIONS));
        files.check(faults);
        faults.check(() -> Requirements.range("--from", from, 1, MOST_PEOPLE));
        if (to != null) {
            faults.check(() -> Requirements.range("--to", to, Math.max(1, from), MOST_PEOPLE));
        }
        Optional<Scenario> read = faults.read(scenario::read);
        if (read.isPresent()) {
            faults.check(() -> staffing(read.get().plant()));
        }
        faults.throwIfAny();
        return read.orElseThrow();
    }

    private Staffing staffing(Plant plant) throws InputException {
        List<String> roles = plant.crew().roles().stream()
                .map(Role::name)
                .filter(name -> Staffing.of(plant, name).winders() > 0
                        && Staffing.of(plant, name).most() > 0)
                .toList();
        if (roles.isEmpty()) {
            throw new InputException(
                    scenario.path().toString(),
                    "No person changes spools in this plant, so there is nobody to have more or fewer of.",
                    "name a role at a line's winder: crew, and give a shift some of it");
        }
        String wanted = roleName == null ? roles.get(0) : roleName;
        if (!roles.contains(wanted)) {
            throw new InputException(
                    "--role = " + wanted,
                    "Must be a role that changes spools and that a shift has: " + String.join(", ", roles) + ".",
                    Nearest.to(wanted, roles).map(near -> "write " + near).orElse("give one of these"));
        }
        return Staffing.of(plant, wanted);
    }

    private List<Integer> people(Staffing staffing) throws InputException {
        int last = to == null ? staffing.most() + 2 : to;
        Requirements.range("--to", last, from, MOST_PEOPLE);
        return IntStream.rangeClosed(from, last).boxed().toList();
    }

    private void print(List<String> lines) {
        if (!experiment.isQuiet()) {
            lines.forEach(console.out()::println);
        }
    }
}
