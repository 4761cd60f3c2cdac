package spoolyard.core.architecture.planted.purge;

import spoolyard.core.architecture.planted.engine.Motor;

/** Breaks: the package purge knows no engine. */
public record Drain(Motor motor) {}
