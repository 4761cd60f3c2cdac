/** Points at which a study looks at a plant; imports {@code scenarios.factor} and {@code core.random}. */
package spoolyard.analysis.study;
