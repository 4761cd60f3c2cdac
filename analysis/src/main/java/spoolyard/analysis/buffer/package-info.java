/**
 * How large an accumulator must be and what it is worth; imports {@code experiment}, {@code theory} and the core, never a
 * report.
 */
package spoolyard.analysis.buffer;
