/** Points from a roster to the labour law that may forbid it; imports {@code calendar} and {@code fault}. */
package spoolyard.scenarios.labour;
