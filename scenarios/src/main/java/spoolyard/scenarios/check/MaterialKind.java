package spoolyard.scenarios.check;

import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;

/** How a line is fed with dry material, and what the lines share for it. */
final class MaterialKind {
    /** The part {@code drying}. */
    static final Kind<DryingRoom> ROOM = new MappingKind<>("drying", MaterialKind::room);

    private static final Kind<Double> HOPPER = QuantityKind.above(Dimension.MASS, "0 kg", "100 t");
    private static final Kind<Double> BATCH = QuantityKind.from(Dimension.MASS, "0 kg", "100 t");

    private final CrewNeedKind crew;

    MaterialKind(CrewNeedKind crew) {
        this.crew = crew;
    }

    /** The key {@code material} of a line. */
    Kind<MaterialSupply> ofLine() {
        return new MappingKind<>("material", this::supply);
    }

    private MaterialSupply supply(MappingReader r) {
        MaterialSupply.Layout layout = r.required("layout", Words.oneOf(MaterialSupply.Layout.class));
        int before = r.reading().faults().count();
        double hopperKg = r.required("hopper", HOPPER);
        double batchKg = r.optional("batch", BATCH, 0.0);
        boolean areRead = r.reading().faults().count() == before;
        if (areRead && batchKg > hopperKg) {
            r.raw("batch").ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "Must be at most the hopper.",
                            "give the kilograms loaded at a time, or leave it out where a loader fills the hopper"));
        }
        return new MaterialSupply(
                layout,
                hopperKg,
                Math.min(batchKg, hopperKg),
                r.required("load", Amounts.WORK),
                r.required("clean", Amounts.WORK),
                r.required("crew", crew),
                r.optional("starts_dry", Words.yesOrNo(), true));
    }

    private static DryingRoom room(MappingReader r) {
        int mobileDryers = r.optional("mobile_dryers", Numbers.whole(0, 100), 0);
        return new DryingRoom(
                mobileDryers,
                mobileDryers > 0 ? r.required("mobile_hopper", HOPPER) : r.optional("mobile_hopper", HOPPER, 0.0),
                r.optional("blenders", Numbers.whole(1, 100), Integer.MAX_VALUE),
                r.optional("looks_ahead", Words.yesOrNo(), true));
    }
}
