package spoolyard.scenarios.check;

import java.util.Map;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.format.Dimension;

/** The part {@code polymers}. */
final class PolymerKind {
    static final Kind<Map<String, Polymer>> ALL =
            new NamedKind<>(code -> new MappingKind<>("polymer", r -> polymer(code, r)));

    private static final Kind<Double> DENSITY = QuantityKind.from(Dimension.DENSITY, "0.3 g/cm3", "5 g/cm3");
    private static final Kind<Double> RATE_FACTOR = Numbers.from("0.01", "10");
    private static final Kind<Double> MELT = QuantityKind.from(Dimension.TEMPERATURE, "50 °C", "450 °C");
    private static final Kind<Double> STANDBY = QuantityKind.from(Dimension.TIME, "0 min", "7 days");

    private static final Kind<Double> DRYING = QuantityKind.from(Dimension.TIME, "0 h", "7 days");

    private static final Kind<Double> EXPOSURE = QuantityKind.above(Dimension.TIME, "0 h", "52 weeks");

    private PolymerKind() {}

    private static Polymer polymer(String code, MappingReader r) {
        return new Polymer(
                code,
                r.required("density", DENSITY),
                r.optional("rate_factor", RATE_FACTOR, 1.0),
                r.required("melt_temperature", MELT),
                r.required("hot_standby_limit", STANDBY),
                r.optional("drying", DRYING, 0.0),
                r.optional("exposure_limit", EXPOSURE, Double.POSITIVE_INFINITY));
    }
}
