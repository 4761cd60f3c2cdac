package spoolyard.core.architecture.planted.washout;

import spoolyard.core.architecture.planted.engine.Motor;

/** Breaks: the package washout knows no engine. */
public record Sink(Motor motor) {}
