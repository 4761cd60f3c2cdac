/**
 * How many people look after how many lines: machine interference, simulated and by published curves; imports
 * {@code experiment}, {@code theory} and the core, never a report.
 */
package spoolyard.analysis.crew;
