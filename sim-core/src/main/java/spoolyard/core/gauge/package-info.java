/**
 * The diameter of a filament under delayed correction: how often and how long it is out of tolerance; imports {@code
 * plant} and {@code random} only.
 */
package spoolyard.core.gauge;
