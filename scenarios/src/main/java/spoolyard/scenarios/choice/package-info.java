/** Choices that cost money and the file that states them; imports fault, field, format, read and the reader of scenarios. */
package spoolyard.scenarios.choice;
