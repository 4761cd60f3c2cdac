/** Arithmetic of time and filament where a mix-up of units would cost; imports nothing of ours. */
package spoolyard.core.quantity;
