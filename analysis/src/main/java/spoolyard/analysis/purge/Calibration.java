package spoolyard.analysis.purge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.colour.Saunderson;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.purge.PurgeModel;
import spoolyard.core.washout.PlugAndTank;
import spoolyard.scenarios.check.LoggedPurge;
import spoolyard.scenarios.check.PurgeBasis;
import spoolyard.scenarios.check.PurgeInputs;

/**
 * Volume and mixing exponent of a purge estimate as a plant's measured changeovers have them. Purges are fitted by their
 * logarithms, so that the same per cent weighs the same on a small line and a large one. Immutable.
 *
 * @param model the model that was calibrated, before it was
 * @param used measured rows, in file order
 * @param notUsed rows that tell nothing
 * @param fit logarithm of the volume, mixing exponent
 */
public record Calibration(PurgeModel model, List<Used> used, List<NotUsed> notUsed, LeastSquares fit) {
    /** Fewest measured rows for two parameters and an idea of how well they fit. */
    public static final int FEWEST = 5;

    /** Where to begin for a plant that has no estimate yet: what {@link #USUAL_KEYS} says, and the format's own values. */
    public static final PurgeInputs.Estimate USUAL = new PurgeInputs.Estimate(
            new PurgeModel(new PurgeModel.Looks(Viewing.D65_10, Saunderson.NONE, 1), new PlugAndTank(0.4), 1, 1, 0.002),
            List.of());

    /** The keys of {@link #USUAL} that a scenario must have. */
    public static final List<String> USUAL_KEYS =
            List.of("measured_under: D65 10\u00b0", "washout: {plug_share: 40 %}");

    /** Copies the lists. */
    public Calibration {
        used = List.copyOf(used);
        notUsed = List.copyOf(notUsed);
    }

    /**
     * A row that is fitted. Immutable.
     *
     * @param row the row
     * @param holdUpKg melt that the line holds
     */
    public record Used(LoggedPurge row, double holdUpKg) {}

    /**
     * A row that is not fitted. Immutable.
     *
     * @param row the row
     * @param reason why
     */
    public record NotUsed(LoggedPurge row, String reason) {}

    /**
     * Calibrates.
     *
     * @param plant the plant
     * @param inputs its colours and measured rows
     * @param estimate where to begin; its looks, washout and resin are kept
     * @return the calibration
     * @throws TooLittleMeasuredException if fewer than {@link #FEWEST} rows can be used, or they do not tell the two
     *     parameters apart
     */
    public static Calibration of(Plant plant, PurgeInputs inputs, PurgeInputs.Estimate estimate)
            throws TooLittleMeasuredException {
        Estimates estimates = Estimates.of(inputs, estimate);
        List<Used> used = new ArrayList<>();
        List<NotUsed> notUsed = new ArrayList<>();
        for (LoggedPurge row : inputs.log()) {
            Optional<String> reason = unfit(row, estimates);
            reason.ifPresentOrElse(
                    why -> notUsed.add(new NotUsed(row, why)), () -> used.add(new Used(row, holdUpKg(plant, row))));
        }
        if (used.size() < FEWEST) {
            throw new TooLittleMeasuredException(
                    used.size() + " of " + inputs.log().size() + " rows can be used");
        }
        LeastSquares fit = fit(used, estimates, estimate.model())
                .orElseThrow(() -> new TooLittleMeasuredException(
                        "they do not tell volume from mixing exponent: the pairs are too much alike"));
        return new Calibration(estimate.model(), used, notUsed, fit);
    }

    private static Optional<String> unfit(LoggedPurge row, Estimates estimates) {
        if (row.basis() != PurgeBasis.MEASURED) {
            return Optional.of("not measured");
        }
        if (row.purge().line().equals("*")) {
            return Optional.of("for all lines, whose hold-ups differ");
        }
        if (row.purge().purgeKg() <= 0) {
            return Optional.of("nothing was purged");
        }
        String from = row.purge().fromColour();
        String to = row.purge().toColour();
        if (!estimates.knows(from, to)) {
            return Optional.of("a colour is left out");
        }
        boolean isSame = estimates.hiddenShare(from, to) >= 1;
        return isSame ? Optional.of("the colours are within the tolerance") : Optional.empty();
    }

    private static double holdUpKg(Plant plant, LoggedPurge row) {
        return plant.lines().stream()
                .filter(line -> line.name().equals(row.purge().line()))
                .mapToDouble(Line::holdUpKg)
                .findFirst()
                .orElseThrow();
    }

    private static Optional<LeastSquares> fit(List<Used> used, Estimates estimates, PurgeModel model) {
        double[] observed = used.stream()
                .mapToDouble(each -> Math.log(each.row().purge().purgeKg() / each.holdUpKg()))
                .toArray();
        double[] start = {Math.log(model.volumeHoldUps()), model.mixingExponent()};
        return LeastSquares.of(
                point -> used.stream()
                        .mapToDouble(each -> point[0] + logTurnovers(each, estimates, model.with(1, point[1])))
                        .toArray(),
                observed,
                start);
    }

    private static double logTurnovers(Used each, Estimates estimates, PurgeModel model) {
        String from = each.row().purge().fromColour();
        String to = each.row().purge().toColour();
        return Math.log(model.washout().turnovers(estimates.hiddenShare(from, to, model)));
    }

    /**
     * The volume.
     *
     * @return melt that takes part in the washout over the hold-up
     */
    public double volumeHoldUps() {
        return Math.exp(fit.parameters().get(0));
    }

    /**
     * The mixing exponent.
     *
     * @return as fitted
     */
    public double mixingExponent() {
        return fit.parameters().get(1);
    }

    /**
     * What the fit says of a row.
     *
     * @param index place among the used rows
     * @return kg
     */
    public double fittedKg(int index) {
        return used.get(index).row().purge().purgeKg()
                / Math.exp(fit.residuals().get(index));
    }

    /**
     * Whether a row fits badly: so far off that in 95 of 100 logs in which all rows are good none is.
     *
     * @param index place among the used rows
     * @return true if it is worth another look
     */
    public boolean isOutlier(int index) {
        return Math.abs(fit.studentised().get(index)) > fit.outlierLimit(0.95);
    }
}
