/**
 * Typed values out of raw trees and rows, with ranges and faults; imports {@code fault}, {@code read}, {@code format} and
 * the plant's laws.
 */
package spoolyard.scenarios.field;
