package spoolyard.analysis.purge;

import spoolyard.scenarios.check.PurgeBasis;

/**
 * The purge of a pair of colours on a line. Immutable.
 *
 * @param from colour code before
 * @param to colour code after
 * @param kg mass run to waste, {@code >= 0}
 * @param minutes time it takes at the rate of the new product
 * @param metresPerStrand filament run to waste by each strand, metres
 * @param basis what the figure rests on
 */
public record PurgeEntry(String from, String to, double kg, double minutes, double metresPerStrand, PurgeBasis basis) {}
