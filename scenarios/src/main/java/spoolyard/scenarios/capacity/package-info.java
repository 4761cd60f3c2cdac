/** Load against capacity by simple arithmetic, before any simulation; imports {@code fault} and the plant's records. */
package spoolyard.scenarios.capacity;
