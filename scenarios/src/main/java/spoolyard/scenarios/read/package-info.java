/** Files as raw trees and rows that remember file and line; imports {@code fault} only. */
package spoolyard.scenarios.read;
