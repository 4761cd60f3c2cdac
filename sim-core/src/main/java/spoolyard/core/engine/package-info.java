/**
 * Clock, event agenda and run loop of a discrete-event simulation, on SSJ's simulator; knows nothing of a plant and
 * imports {@code quantity} and SSJ only.
 */
package spoolyard.core.engine;
