package spoolyard.analysis.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.PlantOverview;
import spoolyard.analysis.report.Setting;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.fault.Warning;

/** Finds what is wrong with a scenario, or sums it up. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        header = "Find every fault of a scenario at once; when it is sound, sum it up, with warnings.",
        description = {
            "",
            "Each fault names file and line, what stands there, what may stand there and how to mend it. The summary"
                    + " weighs load against capacity by mean values, before anything is simulated.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard check scenarios/orrenvale",
            "  spoolyard check scenarios/orrenvale --set /lines/L3/accumulator=\"80 m\"",
            "",
            "Exit codes: 0 the scenario is sound; 1 the program is at fault; 2 the scenario has faults."
        })
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private ScenarioArgument scenario;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws ScenarioException {
        Scenario read = scenario.read();
        Setting setting = new Setting(read.plant(), new PlantClock(read.info().start()));
        new PlantOverview(setting, console.ink())
                .lines(read.warnings().stream().map(Warning::text).toList())
                .forEach(console.out()::println);
        return ExitCode.OK;
    }
}
