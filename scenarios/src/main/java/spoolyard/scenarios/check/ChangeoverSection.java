package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.Approval;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.core.plant.ChangeoverRules.SetUpStep;
import spoolyard.core.plant.EndOfWeek;
import spoolyard.core.plant.PurgeFormula;
import spoolyard.core.plant.PurgeRule;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;

/** The part {@code changeover}: what a line does between two orders. */
final class ChangeoverSection {
    private static final Kind<Double> MOVE = QuantityKind.from(Dimension.TIME_PER_KELVIN, "0 s/K", "60 min/K");
    private static final Kind<Double> EXTRA = QuantityKind.from(Dimension.SHARE, "0 %", "500 %");

    private static final Kind<Double> STANDS = QuantityKind.from(Dimension.TIME, "1 h", "60 days");

    private final Products products;
    private final CrewNeedKind crew;
    private final PurgeFormulaKind formula;
    private final PurgeEstimateKind estimate;
    private final ThroughColours through;
    private final List<MeasuredPurge> measured;

    /**
     * The part as read.
     *
     * @param rules what a run needs
     * @param estimate what the purge estimate says, if there is one
     */
    record Read(ChangeoverRules rules, Optional<PurgeInputs.Estimate> estimate) {}

    ChangeoverSection(PlantNames names, Products products, List<LoggedPurge> log) {
        this.products = products;
        this.crew = new CrewNeedKind(names.roles());
        this.formula = new PurgeFormulaKind(products);
        this.estimate = new PurgeEstimateKind(products);
        this.through = new ThroughColours(products);
        this.measured = log.stream().map(LoggedPurge::purge).toList();
    }

    Kind<Read> kind() {
        return new MappingKind<>("changeover", this::rules);
    }

    private Read rules(MappingReader r) {
        PurgeFormula byClass = r.optional("purge_formula", formula, PurgeFormulaKind.NONE);
        Optional<PurgeEstimateKind.Read> estimated = r.optional("purge_estimate", estimate);
        ChangeoverRules rules = new ChangeoverRules(
                measured,
                estimated.<PurgeRule>map(read -> read.estimate(byClass)).orElse(byClass),
                steps(r, "colour_steps"),
                steps(r, "polymer_steps"),
                steps(r, "diameter_steps"),
                r.optional("temperature_move", MOVE, 0.0),
                r.optional("compound_hold_ups", Amounts.HOLD_UPS, 0.0),
                r.optional("rethread_after_polymer", Words.yesOrNo(), true),
                r.optional("approval", new MappingKind<>("approval", this::approval), Approval.NONE),
                through.read(r),
                r.optional("end_of_week", new MappingKind<>("end_of_week", this::endOfWeek)));
        return new Read(rules, estimated.map(PurgeEstimateKind.Read::said));
    }

    /** A plant without the part: no steps, no formula, only what was measured. */
    Read none() {
        ChangeoverRules rules = new ChangeoverRules(
                measured, PurgeFormulaKind.NONE, List.of(), List.of(), List.of(), 0, 0, true, Approval.NONE);
        return new Read(rules, Optional.empty());
    }

    private List<SetUpStep> steps(MappingReader r, String key) {
        NamedKind<SetUpStep> kind = new NamedKind<>(name -> new MappingKind<>(
                "set_up_step",
                step -> new SetUpStep(name, step.required("takes", Amounts.WORK), step.required("crew", crew))));
        return List.copyOf(r.optional(key, kind, Map.of()).values());
    }

    private EndOfWeek endOfWeek(MappingReader r) {
        return new EndOfWeek(
                r.required("stands", STANDS),
                r.required("compound_hold_ups", Amounts.HOLD_UPS),
                r.required("takes", Amounts.WORK),
                r.required("crew", crew),
                products.colour(r.required("colour", products.colourCode())));
    }

    private Approval approval(MappingReader r) {
        return new Approval(
                r.required("takes", Amounts.WORK),
                r.required("crew", crew),
                r.optional("refused", Amounts.REPEAT_CHANCE, 0.0),
                r.optional("extra_purge", EXTRA, 0.0),
                r.optional("meanwhile", Words.oneOf(Approval.Meanwhile.class), Approval.Meanwhile.RUN_TO_WASTE));
    }
}
