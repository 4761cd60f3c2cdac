/** Breaks rules on purpose. */
package spoolyard.core.planted;
