package spoolyard.core.architecture.planted.account;

import spoolyard.core.architecture.planted.engine.Motor;

/** Breaks: accounts know no engine. */
public record Bill(Motor motor) {}
