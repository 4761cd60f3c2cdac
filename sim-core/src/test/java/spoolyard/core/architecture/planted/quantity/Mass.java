package spoolyard.core.architecture.planted.quantity;

import spoolyard.core.architecture.planted.plant.Recipe;

/** Breaks: quantities stand alone. */
public record Mass(Recipe recipe) {}
