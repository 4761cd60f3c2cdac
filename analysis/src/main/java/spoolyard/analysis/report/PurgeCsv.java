package spoolyard.analysis.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import spoolyard.analysis.purge.PurgeEntry;
import spoolyard.analysis.purge.PurgeMatrix;

/** Writes purges in the form of a scenario's changeovers file. */
public final class PurgeCsv {
    private PurgeCsv() {}

    /**
     * Writes them.
     *
     * @param matrices the purges, each line and polymer once
     * @return a table with a header; {@code basis} tells a reader what was measured and what was not
     */
    public static String text(List<PurgeMatrix> matrices) {
        StringBuilder text = new StringBuilder();
        CSVFormat format = CsvTable.FORMAT;
        try {
            format.printRecord(
                    text, "line", "polymer", "from", "to", "purge_kg", "minutes", "metres_per_strand", "basis");
            for (PurgeMatrix matrix : matrices) {
                for (PurgeEntry entry : matrix.entries()) {
                    format.printRecord(
                            text,
                            matrix.line().name(),
                            matrix.polymer().code(),
                            entry.from(),
                            entry.to(),
                            Figures.cell(entry.kg()),
                            Figures.cell(entry.minutes()),
                            Figures.cell(entry.metresPerStrand()),
                            entry.basis().name().toLowerCase(Locale.ROOT));
                }
            }
        } catch (IOException impossibleInMemory) {
            throw new UncheckedIOException(impossibleInMemory);
        }
        return text.toString();
    }
}
