package spoolyard.analysis.schedule;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.SetUpStep;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.policy.PurgeTable;

/**
 * Expected time, waste and work of each changeover of a plant: the steps that a run takes, each at its mean. Immutable.
 */
public final class ChangeoverArithmetic {
    private static final double S_PER_H = 3600;

    private final ChangeoverRules rules;
    private final PurgeTable purges;
    private final Weights weights;

    /**
     * For a plant.
     *
     * @param plant the plant
     * @param weights what things cost
     */
    public ChangeoverArithmetic(Plant plant, Weights weights) {
        rules = plant.changeovers();
        purges = new PurgeTable(rules);
        this.weights = weights;
    }

    /**
     * One changeover.
     *
     * @param line where
     * @param from product before
     * @param to product after
     * @return what it is expected to take; nothing if the melt is the same
     */
    public ChangeoverEstimate estimate(Line line, Product from, Product to) {
        return from.sameMelt(to) ? ChangeoverEstimate.NONE : sum(line, from, to).estimate();
    }

    /**
     * Who is needed for a changeover, and how long.
     *
     * @param line where
     * @param from product before
     * @param to product after
     * @return expected attended seconds by who may do it, in the order of the work; empty if the melt is the same
     */
    public Map<CrewNeed, Double> crewS(Line line, Product from, Product to) {
        return from.sameMelt(to) ? Map.of() : Collections.unmodifiableMap(sum(line, from, to).attendedS);
    }

    /**
     * A purge at the end of a week.
     *
     * @param line where
     * @param held product before
     * @return what it is expected to take; nothing if the plant has none, or the line is clean
     */
    public ChangeoverEstimate endOfWeek(Line line, Product held) {
        return weekEnd(line, held).map(Sum::estimate).orElse(ChangeoverEstimate.NONE);
    }

    /**
     * Who is needed for a purge at the end of a week, and how long.
     *
     * @param line where
     * @param held product before
     * @return expected attended seconds by who may do it; empty if there is none
     */
    public Map<CrewNeed, Double> endOfWeekCrewS(Line line, Product held) {
        return weekEnd(line, held).map(sum -> sum.attendedS).orElse(Map.of());
    }

    private Optional<Sum> weekEnd(Line line, Product held) {
        return rules.endOfWeek().filter(rule -> rule.isFor(held)).map(rule -> {
            Sum sum = new Sum(line, held, false);
            sum.attended(rule.durationS().mean(), rule.crew());
            sum.compoundKg += rule.compoundKg(line);
            return sum;
        });
    }

    private Sum sum(Line line, Product from, Product to) {
        boolean polymerChanges = !from.polymer().code().equals(to.polymer().code());
        boolean diameterChanges = from.diameterMm() != to.diameterMm();
        boolean colourChanges =
                polymerChanges || !from.colour().code().equals(to.colour().code());
        Sum sum = new Sum(line, to, polymerChanges);
        double compoundKg = polymerChanges ? rules.compoundHoldUps() * line.holdUpKg() : 0;
        if (colourChanges) {
            sum.steps(rules.colourSteps());
        }
        if (polymerChanges) {
            sum.stands(
                    Warming.moveS(line.startStop().heatUp(), from.polymer(), to.polymer(), rules.temperatureMoveS()));
            sum.steps(rules.polymerSteps());
            sum.compound(compoundKg);
        }
        if (diameterChanges) {
            sum.steps(rules.diameterSteps());
        }
        OptionalDouble purgeKg = purges.purgeKg(line, from, to);
        sum.purge(purgeKg.orElse(0));
        if ((polymerChanges || diameterChanges) && rules.rethreadAfterPolymer()) {
            sum.rethread();
        }
        if (colourChanges) {
            sum.approve(purgeKg.orElse(0));
        }
        return sum;
    }

    /** Adds up the steps of one changeover. */
    private final class Sum {
        private final Line line;
        private final Product to;
        private final boolean isMixed;
        private final double kgPerS;
        private double purgeKg;
        private double compoundKg;
        private double lineS;
        private double crewS;
        private double crewMoney;
        private final Map<CrewNeed, Double> attendedS = new LinkedHashMap<>();

        Sum(Line line, Product to, boolean isMixed) {
            this.line = line;
            this.to = to;
            this.isMixed = isMixed;
            kgPerS = line.rateKgPerH(to) / S_PER_H;
        }

        void steps(List<SetUpStep> steps) {
            steps.forEach(step -> attended(step.durationS().mean(), step.crew()));
        }

        void attended(double seconds, CrewNeed crew) {
            lineS += seconds;
            worked(seconds, crew);
        }

        void worked(double seconds, CrewNeed crew) {
            if (!crew.isNobody()) {
                crewS += seconds;
                crewMoney += seconds / S_PER_H * weights.crewPerH(crew);
                attendedS.merge(crew, seconds, Double::sum);
            }
        }

        void stands(double seconds) {
            lineS += seconds;
        }

        void purge(double kg) {
            purgeKg += kg;
            lineS += kg / kgPerS;
        }

        void compound(double kg) {
            compoundKg += kg;
            lineS += kg / kgPerS;
        }

        void runsToWaste(double seconds, CrewNeed crew) {
            purgeKg += seconds * kgPerS;
            attended(seconds, crew);
        }

        void rethread() {
            runsToWaste(
                    line.strands() * line.startStop().threadUpS().mean(),
                    line.startStop().crew());
            runsToWaste(line.startStop().stabiliseS().mean(), CrewNeed.NOBODY);
        }

        /**
         * Each refusal costs a further purge and another judgement: a geometric number of them. What is made until the
         * judgement is waste, or, where it is held, only if refused; somebody judges it all the same.
         */
        void approve(double purgedKg) {
            ChangeoverRules.Approval how = rules.approval();
            if (!how.isAsked()) {
                return;
            }
            double refusals = how.refusalProbability() / (1 - how.refusalProbability());
            boolean isHeld = how.meanwhile() == ChangeoverRules.Approval.Meanwhile.HOLD;
            worked(isHeld ? how.durationS().mean() : 0, how.crew());
            runsToWaste(how.durationS().mean() * (isHeld ? refusals : 1 + refusals), how.crew());
            purge(refusals * how.extraPurgeShare() * purgedKg);
        }

        ChangeoverEstimate estimate() {
            double money = purgeKg * weights.purgePerKg(to, isMixed)
                    + compoundKg * weights.compoundPerKg()
                    + lineS / S_PER_H * weights.linePerH(line, to)
                    + crewMoney;
            return new ChangeoverEstimate(purgeKg, compoundKg, lineS, crewS, money);
        }
    }
}
