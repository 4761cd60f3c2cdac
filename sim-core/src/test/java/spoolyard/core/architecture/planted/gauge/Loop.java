package spoolyard.core.architecture.planted.gauge;

import spoolyard.core.architecture.planted.engine.Motor;

/** Breaks: the study of the gauge knows no engine. */
public record Loop(Motor motor) {}
