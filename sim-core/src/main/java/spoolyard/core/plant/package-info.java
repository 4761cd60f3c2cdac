/** Immutable description of the plant, its people and its orders; imports {@code quantity} only. */
package spoolyard.core.plant;
