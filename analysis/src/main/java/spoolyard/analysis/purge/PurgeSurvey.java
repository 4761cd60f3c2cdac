package spoolyard.analysis.purge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.policy.PurgeTable;
import spoolyard.scenarios.check.LoggedPurge;
import spoolyard.scenarios.check.PurgeBasis;
import spoolyard.scenarios.check.PurgeInputs;

/** The purges of a plant, as its runs use them, with what each rests on. Not for several threads. */
public final class PurgeSurvey {
    private final PurgeInputs inputs;
    private final PurgeTable table;
    private final Optional<Estimates> estimates;
    private final Optional<Calibrated> calibrated;

    /**
     * For a plant.
     *
     * @param plant the plant
     * @param inputs its colours, rows of its changeovers file, its estimate
     */
    public PurgeSurvey(Plant plant, PurgeInputs inputs) {
        this.inputs = inputs;
        this.table = new PurgeTable(plant.changeovers());
        this.estimates = inputs.estimate().map(estimate -> Estimates.of(inputs, estimate));
        this.calibrated = estimates.map(each -> Calibrated.by(plant, inputs.log(), each));
    }

    /**
     * The polymers that a line makes.
     *
     * @param line the line
     * @return those in which a colour is offered, in the order of the scenario
     */
    public List<Polymer> polymersOn(Line line) {
        return inputs.polymers().stream()
                .filter(polymer -> line.polymers().contains(polymer.code()))
                .filter(polymer -> !colours(polymer).isEmpty())
                .toList();
    }

    /**
     * The purges of a line in a polymer, for the first diameter that it makes.
     *
     * @param line the line
     * @param polymer a polymer that it makes
     * @return all pairs of the colours that are offered in it
     */
    public PurgeMatrix matrix(Line line, Polymer polymer) {
        List<Colour> colours = colours(polymer);
        List<PurgeEntry> entries = new ArrayList<>();
        for (Colour from : colours) {
            for (Colour to : colours) {
                if (from != to) {
                    entry(line, product(line, polymer, from), product(line, polymer, to))
                            .ifPresent(entries::add);
                }
            }
        }
        return new PurgeMatrix(line, polymer, colours, entries);
    }

    private List<Colour> colours(Polymer polymer) {
        return inputs.colours().stream()
                .filter(offered -> offered.polymers().contains(polymer.code()))
                .map(PurgeInputs.OfferedColour::colour)
                .toList();
    }

    private static Product product(Line line, Polymer polymer, Colour colour) {
        return new Product(polymer, colour, line.diametersMm().get(0), 1);
    }

    private Optional<PurgeEntry> entry(Line line, Product from, Product to) {
        OptionalDouble known = table.purgeKg(line, from, to);
        if (known.isEmpty()) {
            return Optional.empty();
        }
        double kg = known.getAsDouble();
        return Optional.of(new PurgeEntry(
                from.colour().code(),
                to.colour().code(),
                kg,
                60 * kg / line.rateKgPerH(to),
                to.filament().lengthM(kg / line.strands()),
                basis(line, from, to)));
    }

    private PurgeBasis basis(Line line, Product from, Product to) {
        String fromColour = from.colour().code();
        String toColour = to.colour().code();
        Optional<PurgeBasis> inFile = inputs.log().stream()
                .filter(row -> isFor(row.purge(), line, to))
                .filter(row -> row.purge().fromColour().equals(fromColour))
                .max(Comparator.comparingInt(row -> nearness(row.purge())))
                .map(LoggedPurge::basis);
        if (inFile.isPresent()) {
            return inFile.get();
        }
        if (estimates.isEmpty() || !estimates.get().knows(fromColour, toColour)) {
            return PurgeBasis.FORMULA;
        }
        double hidden = estimates.get().hiddenShare(fromColour, toColour);
        boolean isCovered = calibrated.orElseThrow().covers(line, to.polymer().code(), hidden);
        return isCovered ? PurgeBasis.ESTIMATED : PurgeBasis.EXTRAPOLATED;
    }

    private static boolean isFor(MeasuredPurge row, Line line, Product to) {
        return row.toColour().equals(to.colour().code())
                && (row.line().equals("*") || row.line().equals(line.name()))
                && (row.polymer().equals("*")
                        || row.polymer().equals(to.polymer().code()));
    }

    /** The order in which rows win: line and polymer, line, polymer, neither. */
    private static int nearness(MeasuredPurge row) {
        return (row.line().equals("*") ? 0 : 2) + (row.polymer().equals("*") ? 0 : 1);
    }
}
