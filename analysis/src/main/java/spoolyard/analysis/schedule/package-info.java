/**
 * From a plant to a sequencing problem and back to a plan for the floor; imports {@code core.plant}, {@code core.policy} and
 * {@code analysis.sequence}.
 */
package spoolyard.analysis.schedule;
