package spoolyard.core.architecture.planted.plant;

import spoolyard.core.architecture.planted.engine.Motor;

/** Breaks: values only, closed, no public field, no setter, no mutable static, no arrow to the engine. */
public class Recipe {
    /** Open to all. */
    public double amount;

    private static int count;

    /** Changes what must not change. */
    public void setAmount(double amount) {
        this.amount = amount;
        count++;
    }

    /** Looks where it must not. */
    public static double turns(Motor motor) {
        return motor.turn() * count;
    }
}
