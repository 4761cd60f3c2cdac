/** Shift patterns resolved to instants by the plant's wall clock; imports {@code fault} and the plant's records. */
package spoolyard.scenarios.calendar;
