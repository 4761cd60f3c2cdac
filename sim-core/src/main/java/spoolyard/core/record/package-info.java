/** What a run tells: results, states, causes and the event log as a plug; imports {@code plant} and {@code quantity}. */
package spoolyard.core.record;
