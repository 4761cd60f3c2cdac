/** Breaks rules on purpose. */
package spoolyard.analysis.experiment.planted;
