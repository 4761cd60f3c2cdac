/**
 * What is worth its money: mixes of choices held against a target and against each other; imports {@code buffer}, {@code
 * bottleneck}, {@code experiment}, {@code theory}, the choices of the scenarios and the core, never a report.
 */
package spoolyard.analysis.invest;
