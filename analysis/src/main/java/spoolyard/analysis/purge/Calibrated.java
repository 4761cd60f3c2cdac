package spoolyard.analysis.purge;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.check.LoggedPurge;
import spoolyard.scenarios.check.PurgeBasis;

/**
 * What a plant's measured changeovers cover. An estimate is <em>extrapolated</em> if the share of the old colour that the new
 * one hides lies outside those of the measured pairs, or the line's hold-up outside those of the lines, or the polymer is
 * none of those on which anything was measured. Immutable.
 */
final class Calibrated {
    private final List<Double> shares = new ArrayList<>();
    private final List<Double> holdUpsKg = new ArrayList<>();
    private final List<String> polymers = new ArrayList<>();

    private Calibrated() {}

    /**
     * What is covered.
     *
     * @param plant the plant
     * @param log rows of its changeovers file
     * @param estimates the estimate that they are held against
     * @return the cover; nothing if there is no measured row that could be estimated
     */
    static Calibrated by(Plant plant, List<LoggedPurge> log, Estimates estimates) {
        Calibrated covered = new Calibrated();
        log.stream()
                .filter(row -> row.basis() == PurgeBasis.MEASURED)
                .map(LoggedPurge::purge)
                .filter(row -> estimates.knows(row.fromColour(), row.toColour()))
                .forEach(row -> covered.add(plant, row, estimates));
        return covered;
    }

    private void add(Plant plant, MeasuredPurge row, Estimates estimates) {
        shares.add(estimates.hiddenShare(row.fromColour(), row.toColour()));
        polymers.add(row.polymer());
        plant.lines().stream()
                .filter(line -> row.line().equals("*") || row.line().equals(line.name()))
                .forEach(line -> holdUpsKg.add(line.holdUpKg()));
    }

    /**
     * Whether an estimate is within.
     *
     * @param line the line
     * @param polymer polymer code
     * @param hiddenShare share of the old colour that the new one hides
     * @return true if nothing about it is outside
     */
    boolean covers(Line line, String polymer, double hiddenShare) {
        return isWithin(shares, hiddenShare)
                && isWithin(holdUpsKg, line.holdUpKg())
                && (polymers.contains(polymer) || polymers.contains("*"));
    }

    private static boolean isWithin(List<Double> seen, double value) {
        return seen.stream().anyMatch(each -> each <= value) && seen.stream().anyMatch(each -> each >= value);
    }
}
