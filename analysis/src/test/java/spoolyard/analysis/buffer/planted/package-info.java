/** Breaks rules on purpose. */
package spoolyard.analysis.buffer.planted;
