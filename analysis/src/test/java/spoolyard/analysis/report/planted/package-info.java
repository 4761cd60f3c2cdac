/** Breaks rules on purpose. */
package spoolyard.analysis.report.planted;
