package spoolyard.analysis.theory;

/** The ranges that closed forms ask of their arguments. */
final class Ranges {
    private Ranges() {}

    static void positive(String name, double value) {
        require(value > 0 && value < Double.POSITIVE_INFINITY, name, value, "finite and > 0");
    }

    static void notNegative(String name, double value) {
        require(value >= 0 && value < Double.POSITIVE_INFINITY, name, value, "finite and >= 0");
    }

    static void atLeastOne(String name, int value) {
        if (value < 1) {
            throw new IllegalArgumentException(name + " = " + value + ". Must be >= 1.");
        }
    }

    static void stable(double utilisation) {
        require(utilisation < 1, "utilisation", utilisation, "< 1: no steady state otherwise");
    }

    private static void require(boolean holds, String name, double value, String rule) {
        if (!holds) {
            throw new IllegalArgumentException(name + " = " + value + ". Must be " + rule + ".");
        }
    }
}
