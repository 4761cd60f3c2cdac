package spoolyard.analysis.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.invest.InvestFinding;
import spoolyard.analysis.invest.InvestFinding.MixFinding;
import spoolyard.analysis.invest.InvestFinding.Pick;
import spoolyard.analysis.invest.Worth;
import spoolyard.core.plant.Prices;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.choice.Mix;

/**
 * What a reader must know of mixes: where people are fewer or work at night, where the roster is in doubt, and where the
 * whole plant earns less than the accumulators save. Immutable.
 *
 * @param mixes all mixes
 * @param scenarios the scenario of each
 * @param finding what was found
 */
record MixWarnings(List<Mix> mixes, List<Scenario> scenarios, InvestFinding finding) {
    private static final double SOME_HOURS = 0.5;

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        alone(mix -> mix.price().more().hours() < -SOME_HOURS)
                .ifPresent(names -> lines.add("Fewer people: " + names + ". A leaner crew takes longer to answer burns,"
                        + " smoke and strand breaks. Keep two people able to stop any line. docs/cautions.md, 11"));
        alone(mix -> mix.price().more().ratedHours() - mix.price().more().hours() > SOME_HOURS)
                .ifPresent(names -> lines.add("More hours at night or another extra rate: " + names
                        + ". Rest rules bind, and national law rules. docs/cautions.md, 11"));
        picked().forEach(mix -> {
            newFlags(mix).forEach(flag -> lines.add(mixes.get(mix).label() + ": " + flag));
            contradiction(mix).ifPresent(lines::add);
        });
        if (scenarios
                .get(0)
                .plant()
                .economy()
                .prices()
                .flatMap(Prices::contributionPerKg)
                .isEmpty()) {
            lines.add("Material alone is counted as lost: the scenario has no contribution_per_kg.");
        }
        return lines;
    }

    private Optional<String> alone(Predicate<MixFinding> isMeant) {
        String names = finding.mixes().stream()
                .filter(mix -> mixes.get(mix.number()).taken().size() == 1)
                .filter(isMeant)
                .map(mix -> mixes.get(mix.number()).label())
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? Optional.empty() : Optional.of(names);
    }

    private List<Integer> picked() {
        return Stream.of(finding.cheapest(), finding.best())
                .flatMap(Optional::stream)
                .map(Pick::mix)
                .distinct()
                .toList();
    }

    private List<String> newFlags(int mix) {
        List<String> before = RunCommand.labourFlags(scenarios.get(0).warnings());
        return RunCommand.labourFlags(scenarios.get(mix).warnings()).stream()
                .filter(flag -> !before.contains(flag))
                .toList();
    }

    /** The accumulators say it pays, the good kilograms of the plant say it does not. */
    private Optional<String> contradiction(int mix) {
        Optional<Worth> worth = finding.mixes().get(mix).worth();
        boolean isContradicted = worth.filter(each -> low(each.net()) > 0 && high(each.plantNet()) < 0)
                .isPresent();
        return isContradicted
                ? Optional.of(mixes.get(mix).label() + " costs the whole plant more than its accumulators save: look at"
                        + " whole_plant_net_per_year in mixes.csv before you buy.")
                : Optional.empty();
    }

    private static double low(Interval interval) {
        return interval.mean() - interval.halfWidth().orElse(Double.NaN);
    }

    private static double high(Interval interval) {
        return interval.mean() + interval.halfWidth().orElse(Double.NaN);
    }
}
