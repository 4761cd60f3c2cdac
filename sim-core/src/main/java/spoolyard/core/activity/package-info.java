/** Active periods of stations and the bottleneck they show, while a run goes on; may import {@code record} and {@code quantity}. */
package spoolyard.core.activity;
