package spoolyard.analysis.buffer;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a line may lose at most at a full accumulator: the mean over many runs. Immutable.
 *
 * @param measure in what it is told
 * @param atMost the most, in the measure's unit, {@code >= 0}
 */
public record LossTarget(LossMeasure measure, double atMost) {
    /** The forms that are understood, for a message. */
    public static final String FORMS =
            "\"overflow <= 0.5 % of swaps\", \"waste <= 2 kg per shift\", \"lost <= 5 min per"
                    + " shift\" or \"cost <= 20 per shift\"";

    private static final Pattern FORM = Pattern.compile(
            "\\s*(\\w+)\\s*<=\\s*(\\d{1,9}(?:\\.\\d{1,9})?)\\s*(\\D*?)\\s*", Pattern.UNICODE_CHARACTER_CLASS);
    private static final double MOST_PCT = 100;

    private static final double RARE_PCT = 0.01;

    /** Checks the range. */
    public LossTarget {
        if (!(atMost >= 0)) {
            throw new IllegalArgumentException("atMost = " + atMost + ". Must be >= 0.");
        }
    }

    /**
     * Understands a target as a person types it.
     *
     * @param text see {@link #FORMS}
     * @return the target; empty if it is none
     */
    public static Optional<LossTarget> parse(String text) {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String unit = matcher.group(3).toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return measure(matcher.group(1).toLowerCase(Locale.ROOT), unit)
                .map(measure -> new LossTarget(measure, Double.parseDouble(matcher.group(2))))
                .filter(target -> target.measure != LossMeasure.OVERFLOW || target.atMost <= MOST_PCT);
    }

    private static Optional<LossMeasure> measure(String word, String unit) {
        return switch (word) {
            case "overflow" -> of(LossMeasure.OVERFLOW, unit.matches("%( of (spool )?swaps)?"));
            case "waste" -> of(LossMeasure.WASTE, unit.matches("kg (per|a) shift|kg/shift"));
            case "lost" -> of(LossMeasure.LOST, unit.matches("(min|minutes) (per|a) shift|min/shift"));
            case "cost" -> of(LossMeasure.COST, unit.matches("(\\p{L}{3} )?(per|a) shift"));
            default -> Optional.empty();
        };
    }

    private static Optional<LossMeasure> of(LossMeasure measure, boolean hasItsUnit) {
        return hasItsUnit ? Optional.of(measure) : Optional.empty();
    }

    /**
     * Whether overflows must be so few that they have to be expected rather than counted.
     *
     * @return true below 0.01 % of swaps
     */
    public boolean isRare() {
        return measure == LossMeasure.OVERFLOW && atMost < RARE_PCT;
    }

    /**
     * What a replication lost beyond what it might: its mean is above 0 where the target is missed, and at or below 0
     * where it is met.
     *
     * @param loss of a replication
     * @return in the measure's unit, times swaps or shifts
     */
    double excess(Loss loss) {
        return measure.amount(loss) - atMost * measure.base(loss);
    }
}
