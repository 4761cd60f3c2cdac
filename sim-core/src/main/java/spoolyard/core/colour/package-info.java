/** Colour by numbers: L*a*b*, differences, reflectance, mixing and the screen; imports nothing of ours. */
package spoolyard.core.colour;
