/** How scenario files write things: units, merge patches, pointers, bases; imports {@code fault} and {@code read}. */
package spoolyard.scenarios.format;
