package spoolyard.core.architecture.planted.colour;

import spoolyard.core.architecture.planted.engine.Motor;

/** Breaks: the package colour knows no engine. */
public record Paint(Motor motor) {}
