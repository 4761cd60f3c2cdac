package spoolyard.core.architecture.planted.activity;

import spoolyard.core.architecture.planted.engine.Motor;

/** Breaks: activity knows no engine. */
public record Shift(Motor motor) {}
