/** Replications in parallel and the intervals drawn from them; imports {@code core.record} and {@code core.process}. */
package spoolyard.analysis.experiment;
