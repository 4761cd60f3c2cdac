/** How a flow carries the old melt out of a screw and die: residence-time laws; imports nothing of ours. */
package spoolyard.core.washout;
