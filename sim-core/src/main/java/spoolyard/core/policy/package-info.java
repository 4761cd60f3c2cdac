/** Decisions: which order runs next and how much a changeover purges; imports {@code plant} and {@code quantity}. */
package spoolyard.core.policy;
