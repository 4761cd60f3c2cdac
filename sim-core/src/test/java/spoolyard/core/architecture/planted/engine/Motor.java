package spoolyard.core.architecture.planted.engine;

import spoolyard.core.architecture.planted.plant.Recipe;

/** Breaks: the engine knows no plant. */
public final class Motor {
    private final Recipe recipe = new Recipe();

    /** Turns. */
    public double turn() {
        return recipe.amount;
    }
}
