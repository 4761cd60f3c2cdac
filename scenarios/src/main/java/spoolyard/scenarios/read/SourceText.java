package spoolyard.scenarios.read;

/**
 * A file that was read. Immutable.
 *
 * @param file its name as a person would type it
 * @param text its text, without a byte-order mark
 */
public record SourceText(String file, String text) {}
