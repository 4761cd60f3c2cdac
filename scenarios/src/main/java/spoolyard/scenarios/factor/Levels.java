package spoolyard.scenarios.factor;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The values that a factor may take. Immutable. */
public sealed interface Levels {
    /**
     * The value at a place between the first and the last.
     *
     * @param share the place, in [0, 1)
     * @return the value; of a list each takes an equal part
     */
    Level at(double share);

    /**
     * For people.
     *
     * @return for example {@code 40 m to 200 m, 9 levels}
     */
    String described();

    /**
     * Some values, one by one.
     *
     * @param levels at least two
     */
    record Listed(List<Level> levels) implements Levels {
        private static final int MOST_SHOWN = 6;

        /** Copies the list. */
        public Listed {
            levels = List.copyOf(levels);
        }

        @Override
        public Level at(double share) {
            return levels.get((int) (share * levels.size()));
        }

        @Override
        public String described() {
            return levels.size() <= MOST_SHOWN
                    ? levels.stream().map(Level::label).collect(Collectors.joining(", "))
                    : levels.get(0).label() + " to "
                            + levels.get(levels.size() - 1).label() + ", " + levels.size() + " levels";
        }
    }

    /**
     * All numbers between two.
     *
     * @param low least
     * @param high greatest
     * @param unit text after the number; may be empty
     */
    record Range(BigDecimal low, BigDecimal high, String unit) implements Levels {
        private static final MathContext DIGITS = new MathContext(5);

        @Override
        public Level at(double share) {
            BigDecimal number = low.add(high.subtract(low).multiply(BigDecimal.valueOf(share)));
            return Level.of(written(number.round(DIGITS)));
        }

        @Override
        public String described() {
            return written(low) + " to " + written(high);
        }

        /**
         * Some of them at equal distances, the ends included.
         *
         * @param count how many, {@code >= 2}
         * @return a list
         */
        Listed steps(int count) {
            List<Level> levels = new ArrayList<>();
            BigDecimal parts = BigDecimal.valueOf(count - 1L);
            for (int i = 0; i < count; i++) {
                BigDecimal along = high.subtract(low).multiply(BigDecimal.valueOf(i));
                levels.add(Level.of(written(low.add(along.divide(parts, MathContext.DECIMAL64)))));
            }
            return new Listed(levels);
        }

        private String written(BigDecimal number) {
            BigDecimal plain = number.round(new MathContext(8)).stripTrailingZeros();
            return (plain.toPlainString() + " " + unit).strip();
        }
    }
}
