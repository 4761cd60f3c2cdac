/** The real model, driven by scenario files into corners with known answers. */
package spoolyard.analysis.corners;
