package spoolyard.scenarios.check;

import java.util.Comparator;
import java.util.List;
import spoolyard.core.plant.Break;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/** The breaks of a shift by name, or {@code none}, so that an extra shift can do without those of the pattern. */
final class BreaksKind implements Kind<List<Break>> {
    private static final Kind<Double> LENGTH = QuantityKind.above(Dimension.TIME, "0 min", "4 h");
    private static final Kind<Double> OFFSET = QuantityKind.from(Dimension.TIME, "0 min", "24 h");
    private static final NamedKind<Break> BREAKS =
            new NamedKind<>(name -> new MappingKind<>("break", BreaksKind::oneBreak));

    @Override
    public List<Break> read(Node node, Reading reading) {
        if (node instanceof Node.Text text && text.text().equals("none")) {
            return List.of();
        }
        return BREAKS.read(node, reading).values().stream()
                .sorted(Comparator.comparingLong(Break::offsetTicks))
                .toList();
    }

    @Override
    public List<Break> standIn() {
        return List.of();
    }

    private static Break oneBreak(MappingReader r) {
        return new Break(
                Ticks.ofSeconds(r.required("after", OFFSET)),
                Ticks.ofSeconds(r.required("length", LENGTH)),
                r.optional("style", Words.oneOf("staggered", "together"), "staggered")
                        .equals("staggered"),
                r.optional("relief", Words.yesOrNo(), false));
    }
}
