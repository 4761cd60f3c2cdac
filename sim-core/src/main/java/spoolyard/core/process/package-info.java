/** Mutable run-time state of each station and the events that change it. */
package spoolyard.core.process;
