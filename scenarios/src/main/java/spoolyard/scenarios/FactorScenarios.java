package spoolyard.scenarios;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import spoolyard.scenarios.factor.Factor;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;

/** A scenario with its factors at low or high. Immutable. */
public final class FactorScenarios {
    private final Path scenario;
    private final List<String> sets;
    private final List<Factor> factors;

    /**
     * For a scenario.
     *
     * @param scenario folder or file
     * @param sets values that are set in any case
     * @param factors the factors
     */
    public FactorScenarios(Path scenario, List<String> sets, List<Factor> factors) {
        this.scenario = scenario;
        this.sets = List.copyOf(sets);
        this.factors = List.copyOf(factors);
    }

    /**
     * Tries each level of each factor by itself.
     *
     * @throws ScenarioException with the faults of all levels, each where its factor is declared; those of the scenario
     *     itself if it has any
     */
    public void check() throws ScenarioException {
        ScenarioReader.read(scenario, sets);
        Set<Fault> faults = new LinkedHashSet<>();
        for (Factor factor : factors) {
            check(factor, false, faults);
            check(factor, true, faults);
        }
        ScenarioException.throwIfAny(faults);
    }

    private void check(Factor factor, boolean isHigh, Set<Fault> faults) {
        List<String> all = new ArrayList<>(sets);
        all.add(factor.setting(isHigh));
        try {
            ScenarioReader.read(scenario, all);
        } catch (ScenarioException wrong) {
            Origin level = factor.origin().child(isHigh ? "high" : "low");
            wrong.faults()
                    .forEach(fault -> faults.add(new Fault(
                            fault.kind(),
                            level,
                            fault.value(),
                            "At " + factor.pointer() + ": " + fault.allowed(),
                            fault.mend())));
        }
    }

    /**
     * The scenario of a run.
     *
     * @param isHigh the level of each factor
     * @return the scenario
     * @throws ScenarioException if the levels contradict each other
     */
    public Scenario read(IntPredicate isHigh) throws ScenarioException {
        return read(IntStream.range(0, factors.size())
                .mapToObj(factor -> factors.get(factor).level(isHigh.test(factor) ? 1 : 0))
                .toList());
    }

    /**
     * The scenario of a point.
     *
     * @param levels one a factor, in their order
     * @return the scenario
     * @throws ScenarioException if the levels contradict each other
     */
    public Scenario read(List<Factor.Level> levels) throws ScenarioException {
        List<String> all = new ArrayList<>(sets);
        for (int factor = 0; factor < levels.size(); factor++) {
            all.add(factors.get(factor).pointer() + "=" + levels.get(factor).value());
        }
        return ScenarioReader.read(scenario, all);
    }
}
