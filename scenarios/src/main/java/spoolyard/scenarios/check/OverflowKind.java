package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.Map;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/** What a line does when an accumulator is full: {@code waste}, {@code stop}, or {@code slow} with its numbers. */
final class OverflowKind implements Kind<OverflowPolicy> {
    private static final Kind<Double> FROM_LEVEL = QuantityKind.above(Dimension.SHARE, "0 %", "100 %");
    private static final Kind<Double> MINIMUM_SPEED = QuantityKind.from(Dimension.SHARE, "1 %", "99 %");

    private static final Kind<OverflowPolicy> SLOW = new MappingKind<>(
            "slow",
            r -> new OverflowPolicy.Slow(
                    r.required("from_level", FROM_LEVEL),
                    r.required("minimum_speed", MINIMUM_SPEED),
                    r.required("scrap", Amounts.SHARE)));

    private static final Kind<OverflowPolicy> MAPPING = new MappingKind<>("overflow", r -> r.required("slow", SLOW));

    private static final Kind<OverflowPolicy> WORD = Words.oneOf(words());

    private static Map<String, OverflowPolicy> words() {
        Map<String, OverflowPolicy> words = new LinkedHashMap<>();
        words.put("waste", new OverflowPolicy.Waste());
        words.put("stop", new OverflowPolicy.Stop());
        return words;
    }

    @Override
    public OverflowPolicy read(Node node, Reading reading) {
        return (node instanceof Node.Mapping ? MAPPING : WORD).read(node, reading);
    }

    @Override
    public OverflowPolicy standIn() {
        return WORD.standIn();
    }
}
