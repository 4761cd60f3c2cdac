package spoolyard.analysis.crew;

import spoolyard.analysis.experiment.Difference;
import spoolyard.analysis.experiment.Interval;

/**
 * What a number of people gives. Immutable. Intervals hold each at the usual level, that of the difference jointly over all
 * rows.
 *
 * @param people people of the role in every shift that has any
 * @param efficiency share of the winders' time in which no call waits for a person
 * @param waitS mean time from call to arrival, seconds
 * @param busyShare share of their presence in which the people work or walk
 * @param overflowShare share of the spool changes in which the accumulator filled
 * @param goodPerDay good spools a day, against the plant as it is
 */
public record CrewRow(
        int people,
        Interval efficiency,
        Interval waitS,
        Interval busyShare,
        Interval overflowShare,
        Difference goodPerDay) {}
