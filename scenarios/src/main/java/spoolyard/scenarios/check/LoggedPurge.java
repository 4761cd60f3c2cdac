package spoolyard.scenarios.check;

import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.scenarios.fault.Origin;

/**
 * A row of the changeovers file. Immutable.
 *
 * @param purge what it says
 * @param basis what it rests on: rows that were written by an estimate are no measurements
 * @param origin where it stands
 */
public record LoggedPurge(MeasuredPurge purge, PurgeBasis basis, Origin origin) {}
