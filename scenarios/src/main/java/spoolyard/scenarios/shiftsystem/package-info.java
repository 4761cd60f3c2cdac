/** Common shift systems as ready parts of a scenario; imports {@code read} and {@code fault}. */
package spoolyard.scenarios.shiftsystem;
