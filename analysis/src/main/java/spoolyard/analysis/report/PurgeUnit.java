package spoolyard.analysis.report;

import java.util.function.ToDoubleFunction;
import spoolyard.analysis.purge.PurgeEntry;

/** In what a purge is told. */
public enum PurgeUnit {
    /** Mass run to waste. */
    KG("kg", PurgeEntry::kg),
    /** Time that it takes. */
    MINUTES("minutes", PurgeEntry::minutes),
    /** Filament run to waste by each strand. */
    METRES("metres of each strand", PurgeEntry::metresPerStrand);

    private static final double FEW = 9.95;

    private final String label;
    private final ToDoubleFunction<PurgeEntry> value;

    PurgeUnit(String label, ToDoubleFunction<PurgeEntry> value) {
        this.label = label;
        this.value = value;
    }

    String label() {
        return label;
    }

    double of(PurgeEntry entry) {
        return value.applyAsDouble(entry);
    }

    /** One decimal below ten, none from ten on. */
    String shown(PurgeEntry entry) {
        double number = of(entry);
        return Figures.shown(number, number < FEW && this != METRES ? 1 : 0).replace(" ", "");
    }
}
