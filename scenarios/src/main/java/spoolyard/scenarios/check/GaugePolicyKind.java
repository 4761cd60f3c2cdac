package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.Map;
import spoolyard.core.plant.Gauge;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.Node;

/** What becomes of a spool that is out of tolerance: {@code cut}, {@code b-grade}, or {@code flag} with its number. */
final class GaugePolicyKind implements Kind<Gauge.Policy> {
    private static final Kind<Gauge.Policy> FLAG =
            new MappingKind<>("flag", r -> new Gauge.Policy.Flag(r.required("rejected", Amounts.SHARE)));

    private static final Kind<Gauge.Policy> MAPPING =
            new MappingKind<>("out_of_tolerance", r -> r.required("flag", FLAG));

    private static final Kind<Gauge.Policy> WORD = Words.oneOf(words());

    private static Map<String, Gauge.Policy> words() {
        Map<String, Gauge.Policy> words = new LinkedHashMap<>();
        words.put("cut", new Gauge.Policy.Cut());
        words.put("b-grade", new Gauge.Policy.BGrade());
        return words;
    }

    @Override
    public Gauge.Policy read(Node node, Reading reading) {
        return (node instanceof Node.Mapping ? MAPPING : WORD).read(node, reading);
    }

    @Override
    public Gauge.Policy standIn() {
        return WORD.standIn();
    }
}
