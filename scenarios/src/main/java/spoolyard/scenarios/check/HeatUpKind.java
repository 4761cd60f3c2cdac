package spoolyard.scenarios.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.HeatZone;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/** How a line heats up: a law of the time it takes, or its zones. */
final class HeatUpKind implements Kind<HeatUp> {
    private static final String ZONES = "zones";
    private static final String AIR = "air";
    private static final double USUAL_AIR_C = 20;

    private static final Kind<Double> TEMPERATURE = QuantityKind.from(Dimension.TEMPERATURE, "-40 °C", "60 °C");
    private static final Kind<Double> POWER = QuantityKind.above(Dimension.ELECTRIC_POWER, "0 kW", "1 MW");
    private static final Kind<Double> RATE = QuantityKind.above(Dimension.HEATING_RATE, "0 K/min", "1000 K/min");
    private static final Kind<Double> CAPACITY = QuantityKind.above(Dimension.HEAT_CAPACITY, "0 kJ/K", "100000 kJ/K");
    private static final Kind<Double> COOLING = QuantityKind.above(Dimension.TIME, "0 s", "7 days");
    private static final Kind<Double> OFFSET = QuantityKind.from(Dimension.TEMPERATURE_DIFFERENCE, "-200 K", "200 K");

    private final List<Polymer> polymers;

    /** For a line that makes these polymers. */
    HeatUpKind(List<Polymer> polymers) {
        this.polymers = polymers;
    }

    @Override
    public HeatUp read(Node node, Reading reading) {
        List<String> keys = Trees.keys(node);
        if (!keys.contains(ZONES) && !keys.contains(AIR)) {
            return new HeatUp.Timed(Amounts.WORK.read(node, reading));
        }
        List<String> laws = keys.stream().filter(Amounts.WORK::isLaw).toList();
        laws.forEach(law -> reading.fault(
                FaultKind.CONTRADICTION,
                Trees.at(node, law),
                "Must have either zones or a time.",
                "delete one of them; a merge patch takes an inherited one out with " + law + ": null"));
        return new MappingKind<>("zoned_heat_up", this::zoned).read(Trees.without(node, laws), reading);
    }

    @Override
    public HeatUp standIn() {
        return new HeatUp.Timed(Amounts.WORK.standIn());
    }

    private HeatUp zoned(MappingReader r) {
        double airC = r.optional(AIR, TEMPERATURE, USUAL_AIR_C);
        Kind<Map<String, HeatZone>> kind =
                new NamedKind<>(name -> new MappingKind<>("heat_zone", zone -> zone(name, airC, zone)));
        return new HeatUp.Zoned(List.copyOf(r.required(ZONES, kind).values()), airC);
    }

    private HeatZone zone(String name, double airC, MappingReader r) {
        int before = r.reading().faults().count();
        double heaterKw = r.required("heater", POWER);
        Optional<Double> capacity = r.optional("heat_capacity", CAPACITY);
        Optional<Double> rate = r.optional("heating_rate", RATE);
        double coolingS = r.required("cooling_time", COOLING);
        double fanS = r.optional("fan_cooling_time", COOLING, coolingS);
        double offsetK = r.optional("offset", OFFSET, 0.0);
        if (capacity.isPresent() == rate.isPresent()) {
            requireOne(r, capacity.isPresent());
        }
        double capacityKjPerK = capacity.orElseGet(() -> heaterKw / rate.orElse(RATE.standIn()));
        HeatZone zone = new HeatZone(name, heaterKw, capacityKjPerK, coolingS, fanS, offsetK);
        if (r.reading().faults().count() == before) {
            check(zone, airC, r);
        }
        return zone;
    }

    private static void requireOne(MappingReader r, boolean areBothGiven) {
        String allowed = "Must have either heat_capacity or heating_rate.";
        String mend =
                "give the heat that warms the zone by a kelvin, or how fast it warms from the temperature of the air";
        if (areBothGiven) {
            r.raw("heating_rate").ifPresent(node -> r.reading()
                    .fault(FaultKind.CONTRADICTION, node, allowed, mend + "; a merge patch takes one out with null"));
        } else {
            Fault fault = r.reading().missing(r.origin().child("heat_capacity"), allowed, mend);
            r.followsFrom(fault, "heat_capacity", "heating_rate");
        }
    }

    private void check(HeatZone zone, double airC, MappingReader r) {
        if (zone.fanCoolingS() > zone.coolingS()) {
            fault(r, "fan_cooling_time", "Must not be longer than cooling_time.", "a fan can only cool faster");
        }
        for (Polymer polymer : polymers) {
            double targetC = zone.targetC(polymer);
            if (targetC <= airC) {
                String allowed = "Must leave the set point for " + polymer.code() + " above the air.";
                fault(r, "offset", allowed, "give an offset from the melt temperature, for example -30 K");
                return;
            }
            if (zone.highestC(airC) <= targetC) {
                String allowed = String.format(
                        Locale.ROOT,
                        "Must reach %.0f °C for %s; with what the zone loses it ends at %.0f °C.",
                        targetC,
                        polymer.code(),
                        zone.highestC(airC));
                fault(r, "heater", allowed, "give it more power, less heat_capacity or a longer cooling_time");
                return;
            }
        }
    }

    private static void fault(MappingReader r, String key, String allowed, String mend) {
        r.raw(key).ifPresent(node -> r.reading().fault(FaultKind.CONTRADICTION, node, allowed, mend));
    }
}
