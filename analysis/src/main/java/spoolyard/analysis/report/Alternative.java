package spoolyard.analysis.report;

/**
 * One of the plants compared. Immutable.
 *
 * @param name how it is called, unique in its comparison
 * @param provenance where it comes from
 * @param setting what is run
 */
public record Alternative(String name, Provenance provenance, Setting setting) {}
