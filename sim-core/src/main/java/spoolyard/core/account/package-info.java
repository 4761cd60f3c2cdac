/** What a run drew and cost: plain arithmetic on its results; imports {@code plant}, {@code record} and {@code quantity}. */
package spoolyard.core.account;
