/** Typed values out of raw trees and rows, with ranges and faults; imports {@code fault}, {@code read} and {@code format}. */
package spoolyard.scenarios.field;
