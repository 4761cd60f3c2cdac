package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spoolyard.core.plant.Economy;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.plant.EnergyUse.LineEnergy;
import spoolyard.core.plant.Prices;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;

/** The parts {@code energy} and {@code costs}. */
final class EconomySection {
    private static final Kind<Double> POWER = QuantityKind.from(Dimension.ELECTRIC_POWER, "0 kW", "100 MW");
    private static final Kind<Double> ENERGY = QuantityKind.from(Dimension.ELECTRIC_ENERGY, "0 kWh", "100 MWh");
    private static final Kind<Double> PER_KG = QuantityKind.from(Dimension.SPECIFIC_ENERGY, "0 kWh/kg", "100 kWh/kg");
    private static final Kind<Double> PRICE = Numbers.from("0", "1000000000");

    private final PlantNames names;
    private final Products products;

    EconomySection(PlantNames names, Products products) {
        this.names = names;
        this.products = products;
    }

    /** The part {@code energy}, with what a kilowatt-hour costs, if it says so. */
    private record Energy(EnergyUse use, OptionalDouble perKwh) {}

    Economy economy(MappingReader r) {
        int before = r.reading().faults().count();
        Optional<Energy> energy = r.optional("energy", new MappingKind<>("energy", this::energy));
        OptionalDouble perKwh = energy.map(Energy::perKwh).orElse(OptionalDouble.empty());
        boolean isEnergyRead = r.reading().faults().count() == before;
        Optional<Prices> prices = r.optional("costs", new MappingKind<>("costs", c -> prices(c, perKwh.orElse(0))));
        if (prices.isPresent() && energy.isPresent() && isEnergyRead && perKwh.isEmpty()) {
            r.raw("energy").ifPresent(node -> r.reading()
                    .missing(
                            node.origin().child("price_per_kwh"),
                            "Must be given where costs are.",
                            "add price_per_kwh, in the currency of the costs"));
        }
        return new Economy(energy.map(Energy::use), prices);
    }

    private Energy energy(MappingReader r) {
        double heatUpKwh = r.optional("heat_up", ENERGY, 0.0);
        double standbyKw = r.optional("hot_standby", POWER, 0.0);
        LineEnergy usual = new LineEnergy(heatUpKwh, standbyKw);
        Kind<LineEnergy> line = new MappingKind<>("line_energy", l -> lineEnergy(l, usual));
        Map<String, LineEnergy> own =
                r.optional("lines", new RatesKind<>("line", names.lines(), false, line), Map.of());
        List<LineEnergy> lines = names.lines().stream()
                .map(name -> own.getOrDefault(name, usual))
                .toList();
        EnergyUse use = new EnergyUse(
                r.required("base_hot", POWER),
                r.required("base_cold", POWER),
                r.required("per_kg", PER_KG),
                r.optional("per_kg_ground", PER_KG, 0.0),
                lines);
        Optional<Double> price = r.optional("price_per_kwh", PRICE);
        return new Energy(use, price.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }

    private static LineEnergy lineEnergy(MappingReader r, LineEnergy usual) {
        return new LineEnergy(
                r.optional("heat_up", ENERGY, usual.heatUpKwh()), r.optional("hot_standby", POWER, usual.standbyKw()));
    }

    private Prices prices(MappingReader r, double perKwh) {
        RatesKind<Double> ofPolymers = new RatesKind<>("polymer", names.polymers(), true, PRICE);
        return new Prices(
                r.required("currency", Words.text()),
                r.required("polymer_per_kg", ofPolymers),
                r.required("concentrate_per_kg", new MappingKind<>("concentrate_price", this::concentrate)),
                r.required("compound_per_kg", PRICE),
                r.required("credit_per_kg", new MappingKind<>("credit", EconomySection::credit)),
                r.required("pack_out_per_spool", PRICE),
                r.required("labour_per_hour", new RatesKind<>("role", names.roles(), true, PRICE)),
                perKwh,
                r.optional("contribution_per_kg", ofPolymers));
    }

    private Prices.Concentrate concentrate(MappingReader r) {
        double usual = r.required("usual", PRICE);
        List<String> colours = List.copyOf(products.colours().keySet());
        Kind<Map<String, Double>> known = new RatesKind<>("colour", colours, false, PRICE);
        Kind<Map<String, Double>> any = new NamedKind<>(name -> PRICE);
        return new Prices.Concentrate(usual, r.optional("of_colour", products.isComplete() ? known : any, Map.of()));
    }

    private static Prices.Credit credit(MappingReader r) {
        return new Prices.Credit(
                r.optional("clean", PRICE, 0.0), r.optional("mixed", PRICE, 0.0), r.optional("b_grade", PRICE, 0.0));
    }
}
