/** An invented plant and plausible, but not simulated, results of it, for tests of what is made from results. */
package spoolyard.analysis.sample;
