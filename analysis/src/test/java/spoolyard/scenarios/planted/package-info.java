/** Breaks rules on purpose. */
package spoolyard.scenarios.planted;
