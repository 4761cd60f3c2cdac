package spoolyard.scenarios.check;

import spoolyard.core.plant.Winder;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/**
 * A winder with the reserve of its speed. Which keys it has depends on its type.
 *
 * @param crew who may attend it
 */
record WinderKind(CrewNeedKind crew) implements Kind<WinderKind.WinderWithReserve> {
    private static final Kind<Double> SPEED = QuantityKind.above(Dimension.SPEED, "0 m/min", "2000 m/min");
    private static final Kind<Double> RESERVE = QuantityKind.from(Dimension.SHARE, "0 %", "90 %");

    /**
     * A winder and what of its speed is kept back.
     *
     * @param winder the winder
     * @param reserve share of the highest speed
     */
    record WinderWithReserve(Winder winder, double reserve) {}

    @Override
    public WinderWithReserve read(Node node, Reading reading) {
        return kind().read(node, reading);
    }

    @Override
    public WinderWithReserve standIn() {
        return kind().standIn();
    }

    private Kind<WinderWithReserve> kind() {
        return new MappingKind<>("winder", r -> new WinderWithReserve(winder(r), r.optional("reserve", RESERVE, 0.0)));
    }

    private Winder winder(MappingReader r) {
        int before = r.reading().faults().count();
        boolean isManual =
                r.required("type", Words.oneOf("manual", "two-position")).equals("manual");
        if (r.reading().faults().count() > before) {
            r.rest();
            return kind().standIn().winder();
        }
        return isManual
                ? new Winder.Manual(
                        r.required("max_speed", SPEED),
                        r.required("stop", Amounts.SPOOL_WORK),
                        r.required("finish", Amounts.SPOOL_WORK),
                        r.required("crew", crew))
                : new Winder.TwoPosition(
                        r.required("max_speed", SPEED),
                        r.required("transfer", Amounts.SPOOL_WORK),
                        r.required("unload", Amounts.SPOOL_WORK),
                        r.required("crew", crew));
    }
}
