package spoolyard.core.architecture.planted.random;

import umontreal.ssj.simevents.Event;

/** Breaks: random numbers know no events. */
public record Dice(Event event) {}
