/** The purge of every pair of colours on every line, and its calibration; imports core and scenarios. */
package spoolyard.analysis.purge;
