package spoolyard.core.architecture.planted.policy;

import spoolyard.core.architecture.planted.engine.Motor;

/** Breaks: decisions know no engine. */
public record Choice(Motor motor) {}
