package spoolyard.analysis.report;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import spoolyard.analysis.buffer.Loss;
import spoolyard.core.record.RunResult;

/** The numbers by which plants are judged. */
public enum Measure {
    /** Good spools of all lines over the weeks of the run. */
    GOOD_SPOOLS_PER_WEEK(
            "Good spools per week",
            0,
            new Phrases("makes % more good spools a week", "makes % fewer good spools a week"),
            seen -> seen.perWeek(seen.plant(PlantSheet.SPOOLS))),
    /** Mean over the full shifts; not a number without one. */
    GOOD_SPOOLS_PER_SHIFT(
            "Good spools per shift",
            1,
            new Phrases("makes % more good spools a shift", "makes % fewer good spools a shift"),
            seen -> seen.plant(PlantSheet.SPOOLS_PER_SHIFT)),
    /** Cost of a good spool, in the currency of the scenario; not a number without prices. */
    COST_PER_GOOD_SPOOL(
            "Cost per spool",
            2,
            new Phrases("costs % more per spool", "costs % less per spool"),
            Seen::costPerGoodSpool),
    /** Orders packed too late, or due in the run and not packed. */
    ORDERS_LATE(
            "Late orders",
            1,
            new Phrases("is late on % more orders", "is late on % fewer orders"),
            seen -> seen.plant(PlantSheet.LATE)),
    /** Per cent of the decided orders. */
    ON_TIME_PCT(
            "Orders on time, %",
            1,
            new Phrases("has % points more orders on time", "has % points fewer orders on time"),
            seen -> seen.plant(PlantSheet.ON_TIME)),
    /** Spools ordered times days late, over the late orders. */
    LATE_SPOOL_DAYS(
            "Late spool-days",
            0,
            new Phrases("has % more late spool-days", "has % fewer late spool-days"),
            seen -> seen.plant(PlantSheet.LATE_SPOOL_DAYS)),
    /** Per cent of the mass through the dies. */
    SCRAP_PCT(
            "Scrap, % of mass fed",
            2,
            new Phrases("scraps % points more of its material", "scraps % points less of its material"),
            seen -> seen.plant(PlantSheet.SCRAP_PCT)),
    /** Swaps in which an accumulator filled, per cent of all. */
    OVERFLOW_PCT(
            "Overflow, % of swaps",
            2,
            new Phrases("overflows in % points more of its swaps", "overflows in % points fewer of its swaps"),
            seen -> seen.plant(PlantSheet.OVERFLOW)),
    /** Filament sent to the bin for full or nearly full accumulators, kg. */
    OVERFLOW_WASTE_KG_PER_SHIFT(
            "Overflow waste, kg/shift",
            2,
            new Phrases("wastes % kg more a shift by overflows", "wastes % kg less a shift by overflows"),
            seen -> seen.perShift(Loss::wasteKg)),
    /** Output lost at full accumulators, minutes of the lines at their rate. */
    OVERFLOW_LOST_MIN_PER_SHIFT(
            "Overflow loss, min/shift",
            1,
            new Phrases("loses % minutes more a shift by overflows", "loses % minutes less a shift by overflows"),
            seen -> seen.perShift(Loss::lostMin)),
    /** Per cent of the planned busy time of the lines: what the order book, not the plant, holds back. */
    NO_ORDER_PCT(
            "No order, % of time",
            1,
            new Phrases(
                    "stands % points more of its time without an order",
                    "stands % points less of its time without an order"),
            seen -> seen.plant(PlantSheet.LOSSES.get(StateGroup.LOSSES.indexOf(StateGroup.NO_ORDER)))),
    /** Paid person-hours a week. */
    LABOUR_H_PER_WEEK(
            "Labour hours per week",
            0,
            new Phrases("pays % more hours a week", "pays % fewer hours a week"),
            seen -> seen.perWeek(seen.labourH())),
    /** Longest time from a call to the arrival of a person, hours; those without a shift count too. */
    LONGEST_CREW_WAIT_H(
            "Longest crew wait, h",
            1,
            new Phrases("has a longest crew wait longer by % h", "has a longest crew wait shorter by % h"),
            Seen::longestWaitH);

    private final String label;
    private final int decimals;
    private final Phrases phrases;
    private final ToDoubleFunction<Seen> value;

    Measure(String label, int decimals, Phrases phrases, ToDoubleFunction<Seen> value) {
        this.label = label;
        this.decimals = decimals;
        this.phrases = phrases;
        this.value = value;
    }

    /**
     * All measures of a replication.
     *
     * @param setting what was run
     * @param result what the replication told
     * @return shape {@code double[measures]} in the order of {@link #values()}; not a number where there is nothing to
     *     measure
     */
    public static double[] all(Setting setting, RunResult result) {
        Seen seen = Seen.of(setting, result);
        return Arrays.stream(values())
                .mapToDouble(measure -> measure.value.applyAsDouble(seen))
                .toArray();
    }

    /**
     * The measure of a name.
     *
     * @param name as in the files
     * @return the measure, if there is one
     */
    public static Optional<Measure> named(String name) {
        return Arrays.stream(values())
                .filter(measure -> measure.fileName().equals(name))
                .findFirst();
    }

    /**
     * All names.
     *
     * @return joined by commas
     */
    public static String names() {
        return Arrays.stream(values()).map(Measure::fileName).collect(Collectors.joining(", "));
    }

    /**
     * Name in files and on the command line, with its unit.
     *
     * @return lower case with underscores
     */
    public String fileName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Name for people.
     *
     * @return a few words
     */
    public String label() {
        return label;
    }

    /**
     * Whether more of it is better.
     *
     * @return false where less is
     */
    public boolean isMoreBetter() {
        return this == GOOD_SPOOLS_PER_WEEK || this == GOOD_SPOOLS_PER_SHIFT || this == ON_TIME_PCT;
    }

    /**
     * Digits after the point that suffice as a rule.
     *
     * @return 0 to 2
     */
    int decimals() {
        return decimals;
    }

    /**
     * What a difference means.
     *
     * @param difference one that is not open
     * @return a clause without its subject, for example {@code makes 31 to 44 more good spools a week}
     */
    String clause(Spread difference) {
        String phrase = difference.isAboveZero() ? phrases.more() : phrases.less();
        return phrase.replace("%", difference.size(decimals));
    }

    /**
     * The name inside a sentence.
     *
     * @return the label without its unit
     */
    String inWords() {
        if (this == NO_ORDER_PCT) {
            return "time without an order";
        }
        String words = label.replaceFirst(",.*", "");
        return Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }

    /**
     * Whether it is among those that a comparison tells. Its intervals hold at once, so that each more widens all others;
     * overflows are in the scrap already.
     *
     * @return false for the parts of the scrap
     */
    public boolean isCompared() {
        return this != OVERFLOW_PCT && this != OVERFLOW_WASTE_KG_PER_SHIFT && this != OVERFLOW_LOST_MIN_PER_SHIFT;
    }

    /** The measures that a sentence begins with; the others follow in a second one. */
    static List<Measure> foremost() {
        return List.of(GOOD_SPOOLS_PER_WEEK, COST_PER_GOOD_SPOOL, ORDERS_LATE);
    }

    /** Clauses for a larger and a smaller value; {@code %} stands for the difference. */
    private record Phrases(String more, String less) {}
}
