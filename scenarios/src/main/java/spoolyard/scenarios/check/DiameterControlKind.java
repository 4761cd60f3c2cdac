package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import spoolyard.core.plant.DiameterControl;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/**
 * How the diameter wanders and is corrected.
 *
 * @param polymers codes of the polymers that may have a tolerance of their own
 */
record DiameterControlKind(List<String> polymers) implements Kind<DiameterControl> {
    private static final Kind<Double> SPREAD = QuantityKind.above(Dimension.DEVIATION, "0 mm", "1 mm");
    private static final Kind<Double> DRIFT_TIME = QuantityKind.from(Dimension.TIME, "1 s", "24 h");
    private static final Kind<Double> SAMPLE = QuantityKind.from(Dimension.TIME, "0.01 s", "60 s");
    private static final Kind<Double> BATH = QuantityKind.from(Dimension.LENGTH, "0.1 m", "200 m");
    private static final Kind<Double> GAIN = Numbers.from("0", "0.95");
    private static final Kind<Double> JOIN = QuantityKind.from(Dimension.TIME, "0 s", "10 min");

    private record Drift(double spreadMm, double timeS) {}

    private static final Kind<Drift> DRIFT =
            new MappingKind<>("drift", r -> new Drift(r.required("spread", SPREAD), r.required("time", DRIFT_TIME)));

    @Override
    public DiameterControl read(Node node, Reading reading) {
        return kind().read(node, reading);
    }

    @Override
    public DiameterControl standIn() {
        return kind().standIn();
    }

    private Kind<DiameterControl> kind() {
        return new MappingKind<>("diameter_control", this::control);
    }

    private DiameterControl control(MappingReader r) {
        Drift none = new Drift(0, 1);
        double toleranceMm = r.required("tolerance", ToleranceKind.OF_DIAMETER);
        Map<String, Double> ofPolymers = r.optional("tolerance_of", new NamedKind<>(OfPolymer::new), Map.of());
        double spreadMm = r.required("spread", SPREAD);
        Drift drift = r.optional("drift", DRIFT, none);
        return new DiameterControl(
                toleranceMm,
                ofPolymers,
                spreadMm,
                drift.spreadMm(),
                drift.timeS(),
                r.optional("sample", SAMPLE, 1.0),
                r.required("bath", BATH),
                r.required("gain", GAIN),
                r.optional("join", JOIN, 0.0));
    }

    /** A tolerance under the code of a polymer. */
    private final class OfPolymer implements Kind<Double> {
        private final String code;

        OfPolymer(String code) {
            this.code = code;
        }

        @Override
        public Double read(Node node, Reading reading) {
            Words.name("polymer", polymers).read(new Node.Text(node.origin(), code), reading);
            return ToleranceKind.OF_DIAMETER.read(node, reading);
        }

        @Override
        public Double standIn() {
            return ToleranceKind.OF_DIAMETER.standIn();
        }
    }
}
