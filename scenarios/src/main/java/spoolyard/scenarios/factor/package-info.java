/** Values of a scenario that may be low or high, read from a file; imports {@code read}, {@code field} and {@code fault}. */
package spoolyard.scenarios.factor;
