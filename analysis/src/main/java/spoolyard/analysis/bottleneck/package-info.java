/** What relieving a part of a plant brings, measured by simulation; imports {@code experiment} and the core. */
package spoolyard.analysis.bottleneck;
