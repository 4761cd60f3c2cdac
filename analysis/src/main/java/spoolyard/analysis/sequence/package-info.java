/**
 * Assigns orders to lines and puts them in order: the problem, a local search, an exact programme and lower bounds. Knows
 * products and money only as numbers; imports nothing of ours and touches no file.
 */
package spoolyard.analysis.sequence;
