/**
 * Closed forms of queues, machine interference, buffers and accumulators, each with its source: truth for tests, and
 * drawn beside simulated curves. Imports {@link spoolyard.core.plant.Law} and special functions only, never a
 * simulation.
 */
package spoolyard.analysis.theory;
