/** Rows and trees to plant records, or the full list of faults; imports every other package of scenario reading. */
package spoolyard.scenarios.check;
