/** What a change of colour purges, from washout and mixing; imports {@code colour}, {@code washout} and {@code plant}. */
package spoolyard.core.purge;
