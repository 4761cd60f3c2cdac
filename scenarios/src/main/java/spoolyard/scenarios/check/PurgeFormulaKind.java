package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.PurgeFormula;
import spoolyard.core.plant.PurgeFormula.ClassStep;
import spoolyard.core.plant.PurgeFormula.ColourFactor;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/**
 * Purge by shade class.
 *
 * @param products colours that factors may name
 */
record PurgeFormulaKind(Products products) implements Kind<PurgeFormula> {
    /** No formula. */
    static final PurgeFormula NONE = new PurgeFormula(0, List.of(), 0, 1, List.of(), List.of());

    private static final Kind<Double> PLUG = QuantityKind.from(Dimension.SHARE, "0 %", "99 %");
    private static final Kind<Double> RESIDUAL = QuantityKind.from(Dimension.SHARE, "0.0001 %", "99 %");
    private static final Kind<Double> FACTOR = Numbers.from("0.1", "20");
    private static final Kind<List<Integer>> CLASSES = ListKind.some(Numbers.whole(0, 3));

    private static final Kind<FarColours> FAR = new MappingKind<>(
            "far_colours",
            r -> new FarColours(
                    r.required("delta_e", Numbers.above("0", "300")),
                    r.required("divide_residual_by", Numbers.from("1", "1000"))));

    /** Colours of one class that are far apart. */
    private record FarColours(double deltaE, double divisor) {}

    @Override
    public PurgeFormula read(Node node, Reading reading) {
        return kind().read(node, reading);
    }

    @Override
    public PurgeFormula standIn() {
        return NONE;
    }

    private Kind<PurgeFormula> kind() {
        return new MappingKind<>("purge_formula", this::formula);
    }

    private PurgeFormula formula(MappingReader r) {
        Map<String, ClassStep> steps =
                r.required("steps", new NamedKind<>(name -> new MappingKind<>("class_step", PurgeFormulaKind::step)));
        FarColours far = r.optional("far_colours", FAR, new FarColours(0, 1));
        return new PurgeFormula(
                r.required("plug_share", PLUG),
                List.copyOf(steps.values()),
                far.deltaE(),
                far.divisor(),
                factors(r, "to_colour"),
                factors(r, "from_colour"));
    }

    private static ClassStep step(MappingReader r) {
        Optional<List<Integer>> darker = r.optional("darker_by", CLASSES);
        Optional<List<Integer>> lighter = r.optional("lighter_by", CLASSES);
        if (darker.isPresent() == lighter.isPresent()) {
            r.reading()
                    .missing(
                            r.origin().child("darker_by"),
                            "Must have either darker_by or lighter_by.",
                            "write for example darker_by: [2, 3]");
        }
        int sign = darker.isPresent() ? 1 : -1;
        List<Integer> steps = darker.or(() -> lighter).orElse(List.of(0)).stream()
                .map(step -> sign * step)
                .sorted()
                .toList();
        requireWithoutGap(steps, darker.isPresent() ? "darker_by" : "lighter_by", r);
        return new ClassStep(
                steps.get(0),
                steps.get(steps.size() - 1),
                r.required("residual", RESIDUAL),
                r.required("dead_zone", FACTOR));
    }

    private static void requireWithoutGap(List<Integer> steps, String key, MappingReader r) {
        boolean hasGap = steps.get(steps.size() - 1) - steps.get(0) != steps.size() - 1;
        if (hasGap) {
            r.raw(key).ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "Must be class steps that follow one another, each once.",
                            "split it into two steps"));
        }
    }

    private List<ColourFactor> factors(MappingReader r, String key) {
        Kind<Map<String, ColourFactor>> kind = new NamedKind<>(colour -> new FactorKind(colour, products.colourCode()));
        return List.copyOf(r.optional(key, kind, Map.of()).values());
    }

    /** A factor under the code of a colour. */
    private record FactorKind(String colour, Kind<String> code) implements Kind<ColourFactor> {
        @Override
        public ColourFactor read(Node node, Reading reading) {
            code.read(new Node.Text(node.origin(), colour), reading);
            return new ColourFactor(colour, FACTOR.read(node, reading));
        }

        @Override
        public ColourFactor standIn() {
            return new ColourFactor(colour, 1);
        }
    }
}
