package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Regrind;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;

/** The part {@code regrind} of the materials: what is ground, how, and what takes it. */
final class RegrindKind {
    private static final Kind<Double> SHARE = QuantityKind.above(Dimension.SHARE, "0 %", "100 %");
    private static final Kind<Double> DUST = QuantityKind.from(Dimension.SHARE, "0 %", "50 %");
    private static final Kind<Double> BATCH = QuantityKind.from(Dimension.MASS, "1 kg", "100 t");

    private final PlantNames names;
    private final Products products;

    RegrindKind(PlantNames names, Products products) {
        this.names = names;
        this.products = products;
    }

    Kind<Regrind> kind() {
        return new MappingKind<>("regrind", this::regrind);
    }

    private Regrind regrind(MappingReader r) {
        List<String> polymers = r.required("polymers", ListKind.some(Words.name("polymer", names.polymers())));
        Kind<Double> opening = StockAmount.RESIN.any();
        return new Regrind(
                polymers,
                r.required("into", ListKind.some(colour())),
                r.required("share", SHARE),
                r.optional("scrap", ListKind.some(Words.oneOf(Regrind.Scrap.class)), List.of(Regrind.Scrap.values())),
                grinding(r),
                r.optional("opening", new RatesKind<>("ground polymer", polymers, false, opening), Map.of()));
    }

    private Kind<String> colour() {
        return products.isComplete() ? Words.name("colour", products.colours().keySet()) : Words.text();
    }

    private static Regrind.Grinding grinding(MappingReader r) {
        double batchKg = r.optional("batch", BATCH, 25.0);
        double dust = r.optional("dust", DUST, 0.0);
        double roomKg = r.optional("room", StockAmount.RESIN.orUnlimited(), Double.POSITIVE_INFINITY);
        r.raw("room").filter(node -> roomKg < batchKg * (1 - dust)).ifPresent(node -> r.reading()
                .fault(
                        FaultKind.CONTRADICTION,
                        node,
                        "Must have room for what a batch gives.",
                        "make it larger, or the batch smaller"));
        return new Regrind.Grinding(batchKg, dust, roomKg);
    }
}
