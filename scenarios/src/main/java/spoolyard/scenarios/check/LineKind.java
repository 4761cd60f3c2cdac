package spoolyard.scenarios.check;

import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Accumulator;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.Window;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;

/** An extrusion line. */
final class LineKind {
    private static final Kind<Double> RATE = QuantityKind.above(Dimension.MASS_RATE, "0 kg/h", "2000 kg/h");
    private static final Kind<Double> HOLD_UP = QuantityKind.from(Dimension.MASS, "0 kg", "200 kg");
    private static final Kind<Double> STORE = QuantityKind.from(Dimension.LENGTH, "0 m", "5000 m");
    private static final Kind<Double> OVERLENGTH = QuantityKind.from(Dimension.SHARE, "0 %", "20 %");
    private static final Kind<Double> LEAD = QuantityKind.from(Dimension.TIME, "0 s", "24 h");

    private final PlantNames names;
    private final Products products;
    private final LineTimes times;
    private final CrewNeedKind crew;
    private final GaugeStudies studies = new GaugeStudies();

    LineKind(PlantNames names, Products products, LineTimes times) {
        this.names = names;
        this.products = products;
        this.times = times;
        this.crew = new CrewNeedKind(names.roles());
    }

    Kind<Line> named(String name) {
        return new MappingKind<>("line", r -> line(name, r));
    }

    private Line line(String name, MappingReader r) {
        WinderKind.WinderWithReserve winder = r.required("winder", new WinderKind(crew));
        List<Window> plannedStops = times.plannedStops(r);
        List<String> polymers = r.required("polymers", ListKind.some(Words.name("polymer", names.polymers())));
        Line line = new Line(
                name,
                r.optional("strands", Numbers.whole(1, 4), 1),
                r.required("rate", RATE),
                polymers,
                r.required("diameters", ListKind.some(Amounts.DIAMETER)),
                r.required("hold_up", HOLD_UP),
                accumulator(r),
                winder.winder(),
                winder.reserve(),
                r.required("overflow", new OverflowKind()),
                r.optional("overlength", OVERLENGTH, 0.0),
                r.optional("winding_defects", Amounts.SHARE, 0.0),
                r.optional("winding_defects_after_thread_up", Amounts.SHARE, 0.0),
                startStop(r, new HeatUpKind(known(polymers))),
                new StoppageKind(crew).ofLine(r),
                plannedStops,
                times.workingPeriods(name),
                onLineNow(r),
                r.optional("at_start", Words.oneOf("cold", "running"), "cold").equals("running"),
                r.optional("place", Amounts.PLACE, Place.ORIGIN),
                r.optional("material", new MaterialKind(crew).ofLine()),
                Optional.empty());
        return line.withGauge(r.optional("gauge", new GaugeKind(line, products, studies)));
    }

    private static Accumulator accumulator(MappingReader r) {
        int before = r.reading().faults().count();
        double homeM = r.optional("accumulator_home", STORE, 0.0);
        double capacityM = r.required("accumulator", STORE);
        boolean isClean = r.reading().faults().count() == before;
        if (isClean && capacityM < homeM) {
            r.raw("accumulator").ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "Must be at least accumulator_home.",
                            "give the metres it holds when full, those at home included"));
        }
        return new Accumulator(homeM, Math.max(homeM, capacityM));
    }

    /** Those that are described without a fault. */
    private List<Polymer> known(List<String> codes) {
        return codes.stream()
                .filter(products.polymerCodes()::contains)
                .map(products::polymer)
                .toList();
    }

    private StartStop startStop(MappingReader r, HeatUpKind heatUp) {
        return new StartStop(
                r.required("heat_up", heatUp),
                r.required("soak", Amounts.WORK),
                r.required("thread_up", Amounts.WORK),
                r.required("stabilise", Amounts.WORK),
                r.required("start_up_hold_ups", Amounts.HOLD_UPS),
                r.required("shut_down", Amounts.WORK),
                r.required("shut_down_hold_ups", Amounts.HOLD_UPS),
                r.required("end_of_period", Words.oneOf(EndOfPeriod.class)),
                r.optional("preheat_lead", LEAD, 0.0),
                r.required("line_crew", crew));
    }

    private Optional<Product> onLineNow(MappingReader r) {
        return r.optional("on_line_now", new MappingKind<>("on_line_now", this::product));
    }

    private Product product(MappingReader r) {
        return new Product(
                products.polymer(r.required("polymer", Words.name("polymer", products.polymerCodes()))),
                products.colour(r.required("colour", products.colourCode())),
                r.required("diameter", Amounts.DIAMETER),
                r.optional("spool", Amounts.SPOOL_MASS, 1.0));
    }
}
