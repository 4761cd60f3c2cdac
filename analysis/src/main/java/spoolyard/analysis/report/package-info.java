/** From replications to tables, text, JSON and pictures, and the results folder; imports {@code experiment}. */
package spoolyard.analysis.report;
