/**
 * Streams of random numbers keyed by name, and the one place that turns uniforms into variates; imports {@code plant}
 * (the laws), {@code quantity} and SSJ's generators and distributions only.
 */
package spoolyard.core.random;
