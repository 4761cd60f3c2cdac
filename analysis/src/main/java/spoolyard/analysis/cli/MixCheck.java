package spoolyard.analysis.cli;

import java.util.List;
import spoolyard.analysis.invest.Extent;
import spoolyard.analysis.invest.MixPrices;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.choice.Option;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.ScenarioException;

/** Whether options can be weighed: alike in time, lines and prices of the scenario, and priced by what they have more. */
final class MixCheck {
    private final Plant now;
    private final Faults faults = new Faults();

    private MixCheck(Plant now) {
        this.now = now;
    }

    /**
     * Checks each option by itself.
     *
     * @param prices the mixes with their plants
     * @throws ScenarioException with every fault, each where its option is written
     */
    static void check(MixPrices prices) throws ScenarioException {
        MixCheck check = new MixCheck(prices.plants().get(0));
        prices.alone()
                .forEach(mix -> check.option(
                        prices.mixes().get(mix).taken().get(0).option(),
                        prices.plants().get(mix)));
        check.faults.throwIfAny();
    }

    private void option(Option option, Plant then) {
        if (then.horizonTicks() != now.horizonTicks()
                || !names(then).equals(names(now))
                || !then.economy().prices().equals(now.economy().prices())) {
            fault(
                    option,
                    "set",
                    "changed",
                    "Must leave the time of the run, the names of the lines and the costs of the scenario as they are.",
                    "set them in the scenario or with --set, and prices of options in this file");
            return;
        }
        Extent extent = Extent.between(now, then, 0);
        if (option.price().buyPerMetre() > 0 && extent.metres() <= 0) {
            fault(
                    option,
                    "buy_per_metre",
                    Double.toString(option.price().buyPerMetre()),
                    "Must stand only where the option has more metres of accumulator than the scenario.",
                    "write buy for what is bought besides, or leave it out");
        }
        if (option.price().buyPerWinder() > 0 && extent.winders() == 0) {
            fault(
                    option,
                    "buy_per_winder",
                    Double.toString(option.price().buyPerWinder()),
                    "Must stand only where the option changes a winder of the scenario.",
                    "write buy for what is bought besides, or leave it out");
        }
    }

    private static List<String> names(Plant plant) {
        return plant.lines().stream().map(Line::name).toList();
    }

    private void fault(Option option, String key, String value, String allowed, String mend) {
        faults.add(new Fault(FaultKind.CONTRADICTION, option.origin().child(key), value, allowed, mend));
    }
}
