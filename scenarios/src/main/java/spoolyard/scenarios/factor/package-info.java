/**
 * Values of a scenario that a study varies, read from a file or the command line; imports {@code read}, {@code field},
 * {@code format} and {@code fault}.
 */
package spoolyard.scenarios.factor;
