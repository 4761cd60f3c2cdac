/** Reading scenarios: the public entrance; imports every package below it. */
package spoolyard.scenarios;
