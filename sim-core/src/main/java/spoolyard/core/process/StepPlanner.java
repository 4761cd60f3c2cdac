package spoolyard.core.process;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.SetUpStep;
import spoolyard.core.plant.EndOfWeek;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.policy.PurgeTable;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Variate;
import spoolyard.core.record.LineState;
import spoolyard.core.record.ScrapCause;

/** Writes the list of steps that takes a line from its condition to making a product, and that which shuts it down. */
final class StepPlanner {
    private final World world;
    private final Line line;
    private final StartStop startStop;
    private final ChangeoverRules rules;
    private final PurgeTable purges;
    private final ToDoubleFunction<Product> rateKgPerH;
    private final Map<String, Variate> times = new LinkedHashMap<>();
    private final Heating heating;
    private final Variate threadUp;
    private final Variate stabilise;
    private final Variate shutDown;

    StepPlanner(World world, Line line, Heating heating, PurgeTable purges, ToDoubleFunction<Product> rateKgPerH) {
        this.world = world;
        this.line = line;
        this.startStop = line.startStop();
        this.rules = world.plant().changeovers();
        this.purges = purges;
        this.rateKgPerH = rateKgPerH;
        this.heating = heating;
        this.threadUp = variate(startStop.threadUpS(), "thread-up");
        this.stabilise = variate(startStop.stabiliseS(), "stabilising");
        this.shutDown = variate(startStop.shutDownS(), "shut-down");
    }

    private Variate variate(Law law, String what) {
        return world.streams().variate(law, "line " + line.name() + " / " + what);
    }

    long drawShutDownTicks() {
        return shutDown.nextTicks();
    }

    /** Orderly shut-down in a given time. */
    List<Step> shutDown(long ticks) {
        double massKg = startStop.shutDownHoldUps() * line.holdUpKg();
        double kgPerS = ticks > 0 ? massKg / Ticks.toSeconds(ticks) : 0;
        Step.Waste waste = new Step.Waste(kgPerS, ScrapCause.SHUT_DOWN, false);
        return List.of(new Step(
                "shut down", LineState.SHUTTING_DOWN, ticks, waste, startStop.crew(), TaskKind.SHUT_DOWN, false));
    }

    /** Time of the purge at the end of a week; drawn for each week. */
    long drawEndOfWeekTicks(EndOfWeek purge) {
        return named(purge.durationS(), "end-of-week purge").nextTicks();
    }

    /** Compound through the screw in a given time. */
    List<Step> endOfWeek(EndOfWeek purge, long ticks) {
        double kgPerS = ticks > 0 ? purge.compoundKg(line) / Ticks.toSeconds(ticks) : 0;
        Step.Waste waste = new Step.Waste(kgPerS, ScrapCause.POLYMER_PURGE, false);
        return List.of(
                new Step("end-of-week purge", LineState.PURGING, ticks, waste, purge.crew(), TaskKind.SET_UP, false));
    }

    /** From the line's condition to making a product. */
    List<Step> toMake(Product product, LineCondition condition) {
        List<Step> steps = new ArrayList<>();
        boolean cold = !condition.isHot();
        if (cold) {
            steps.addAll(heating.fromCold(Optional.of(product.polymer())));
        }
        condition
                .inScrew()
                .filter(from -> !from.sameMelt(product))
                .ifPresent(from -> changeover(steps, from, product, condition));
        if (!cold && steps.stream().noneMatch(Step::isTemperatureMove)) {
            heating.toSetPoints(product.polymer()).ifPresent(step -> steps.add(0, step));
        }
        addStartUpPurge(steps, product, condition);
        condition
                .colour()
                .furtherPurgeKg()
                .ifPresent(kg -> steps.add(purge("purge again", LineState.PURGING, kg, product, ScrapCause.APPROVAL)));
        ScrapCause cause = condition.cause();
        boolean forChangeover = cause == ScrapCause.POLYMER_PURGE;
        if (!condition.isThreaded()) {
            addThreadUps(steps, product, cause, forChangeover);
        }
        if (!condition.isStable()) {
            Variate time = condition
                    .unsettledBy()
                    .flatMap(by -> by.stabiliseS().map(law -> named(law, by.name() + " / stabilising")))
                    .orElse(stabilise);
            Step step = Step.alone("stabilise", LineState.STARTING, time.nextTicks(), waste(product, cause, false));
            steps.add(forChangeover ? step.inChangeover() : step);
        }
        condition
                .inScrew()
                .filter(from -> !sameColour(from, product))
                .ifPresent(from -> addApprovals(steps, from, product, condition.colour()));
        return steps;
    }

    private static boolean sameColour(Product from, Product to) {
        return from.colour().code().equals(to.colour().code())
                && from.polymer().code().equals(to.polymer().code());
    }

    private void addStartUpPurge(List<Step> steps, Product product, LineCondition condition) {
        double limitS = condition.inScrew().orElse(product).polymer().hotStandbyLimitS();
        boolean stoodTooLong =
                !condition.isThreaded() && Ticks.toSeconds(world.now() - condition.stoodSince()) > limitS;
        double massKg = startStop.startUpHoldUps() * line.holdUpKg();
        if ((condition.hasStaleMelt() || stoodTooLong) && massKg > 0) {
            steps.add(purge("first melt", LineState.STARTING, massKg, product, ScrapCause.START_UP));
        }
    }

    private void addThreadUps(List<Step> steps, Product product, ScrapCause cause, boolean forChangeover) {
        for (int strand = 1; strand <= line.strands(); strand++) {
            steps.add(new Step(
                    "thread up",
                    LineState.STARTING,
                    threadUp.nextTicks(),
                    waste(product, cause, false),
                    startStop.crew(),
                    TaskKind.THREAD_UP,
                    forChangeover));
        }
    }

    private void changeover(List<Step> steps, Product from, Product to, LineCondition condition) {
        boolean polymerChanges = !from.polymer().code().equals(to.polymer().code());
        boolean diameterChanges = from.diameterMm() != to.diameterMm();
        if (!sameColour(from, to)) {
            addSetUp(steps, "colour step ", rules.colourSteps());
        }
        if (polymerChanges) {
            addPolymerChange(steps, from, to, condition);
        }
        if (diameterChanges) {
            addSetUp(steps, "diameter step ", rules.diameterSteps());
        }
        double purgeKg = colourPurgeKg(from, to, polymerChanges && rules.compoundHoldUps() > 0);
        if (purgeKg > 0) {
            steps.add(purge("purge", LineState.PURGING, purgeKg, to, ScrapCause.COLOUR_PURGE)
                    .inChangeover());
        }
        if ((polymerChanges || diameterChanges) && rules.rethreadAfterPolymer() && condition.isThreaded()) {
            condition.unthreaded(ScrapCause.POLYMER_PURGE);
        }
    }

    /** Where compound has cleaned the screw between two polymers, a pair that nothing is known of needs no more. */
    private double colourPurgeKg(Product from, Product to, boolean isCompounded) {
        OptionalDouble known = purges.purgeKg(line, from, to);
        if (known.isEmpty() && !isCompounded) {
            throw new IllegalStateException(
                    "line " + line.name() + ": no purge is known from " + from.label() + " to " + to.label());
        }
        return known.orElse(0);
    }

    private void addPolymerChange(List<Step> steps, Product from, Product to, LineCondition condition) {
        if (condition.isHot()) {
            steps.add(heating.move(from.polymer(), to.polymer()).inChangeover());
        }
        addSetUp(steps, "polymer step ", rules.polymerSteps());
        double compoundKg = rules.compoundHoldUps() * line.holdUpKg();
        if (compoundKg > 0) {
            steps.add(purge("purge compound", LineState.PURGING, compoundKg, to, ScrapCause.POLYMER_PURGE)
                    .inChangeover());
        }
    }

    private void addSetUp(List<Step> steps, String kind, List<SetUpStep> descriptions) {
        for (SetUpStep step : descriptions) {
            long ticks = named(step.durationS(), kind + step.name()).nextTicks();
            steps.add(new Step(
                    step.name(), LineState.SET_UP, ticks, Step.Waste.NONE, step.crew(), TaskKind.SET_UP, true));
        }
    }

    /** Judges the colour; each refusal costs a further purge and another judgement. */
    private void addApprovals(List<Step> steps, Product from, Product to, ColourApproval colour) {
        ChangeoverRules.Approval how = rules.approval();
        if (!how.isAsked()) {
            return;
        }
        double extraKg = how.extraPurgeShare() * purges.purgeKg(line, from, to).orElse(0);
        if (how.meanwhile() == ChangeoverRules.Approval.Meanwhile.HOLD) {
            colour.changes(extraKg);
            return;
        }
        addApproval(steps, to, colour);
        while (colour.drawRefusal()) {
            steps.add(purge("purge again", LineState.PURGING, extraKg, to, ScrapCause.APPROVAL)
                    .inChangeover());
            addApproval(steps, to, colour);
        }
    }

    private void addApproval(List<Step> steps, Product to, ColourApproval colour) {
        steps.add(new Step(
                "colour approval",
                LineState.APPROVAL,
                colour.drawTicks(),
                waste(to, ScrapCause.APPROVAL, true),
                rules.approval().crew(),
                TaskKind.APPROVAL,
                true));
    }

    private Step purge(String name, LineState state, double massKg, Product product, ScrapCause cause) {
        long ticks = massKg > 0 ? Ticks.ofSeconds(massKg / kgPerS(product)) : 0;
        Step.Waste waste = new Step.Waste(ticks > 0 ? massKg / Ticks.toSeconds(ticks) : 0, cause, false);
        return Step.alone(name, state, ticks, waste);
    }

    private Step.Waste waste(Product product, ScrapCause cause, boolean alsoWhileWaiting) {
        return new Step.Waste(kgPerS(product), cause, alsoWhileWaiting);
    }

    private double kgPerS(Product product) {
        return rateKgPerH.applyAsDouble(product) / 3600;
    }

    private Variate named(Law law, String what) {
        return times.computeIfAbsent(what, key -> variate(law, key));
    }
}
