package spoolyard.scenarios.choice;

import java.util.List;
import java.util.OptionalDouble;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/**
 * Reads the price of an option: {@code buy}, {@code buy_per_metre}, {@code buy_per_winder} with {@code life_years}, {@code
 * per_year}, {@code per_hour}; at least one of them, for what is free should say so.
 */
final class PriceReader {
    private static final String MOST = "1000000000";
    private static final String MOST_PER_HOUR = "10000";
    private static final String WAGES = "wages";
    private static final List<String> ONCE = List.of("buy", "buy_per_metre", "buy_per_winder");

    private PriceReader() {}

    static Price read(MappingReader r) {
        boolean isBought = ONCE.stream().filter(key -> r.raw(key).isPresent()).count() > 0;
        boolean isYearly = r.raw("per_year").isPresent();
        if (!isBought && !isYearly && r.raw("per_hour").isEmpty()) {
            r.reading()
                    .missing(
                            r.origin().child("per_year"),
                            "Must have a price: buy, buy_per_metre, buy_per_winder, per_year or per_hour.",
                            "add what it costs; per_year: 0 for what is free, per_hour: wages where only pay changes");
        }
        Kind<Double> money = Numbers.from("0", MOST);
        Kind<Double> years = Numbers.above("0", "100");
        return new Price(
                r.optional("buy", money, 0.0),
                r.optional("buy_per_metre", money, 0.0),
                r.optional("buy_per_winder", money, 0.0),
                isBought ? r.required("life_years", years) : r.optional("life_years", years, 1.0),
                r.optional("per_year", money, 0.0),
                r.raw("per_hour").map(node -> perHour(node, r.reading())).orElse(OptionalDouble.empty()));
    }

    private static OptionalDouble perHour(Node node, Reading reading) {
        if (node.shown().strip().equals(WAGES)) {
            return OptionalDouble.empty();
        }
        Reading attempt = Reading.begin();
        double price = Numbers.from("0", MOST_PER_HOUR).read(node, attempt);
        if (!attempt.faults().isEmpty()) {
            reading.fault(
                    FaultKind.NOT_A_VALUE,
                    node,
                    "Must be a number >= 0 and <= " + MOST_PER_HOUR + ", without a unit, or the word wages.",
                    "write wages for the wages of the scenario");
        }
        return OptionalDouble.of(price);
    }
}
