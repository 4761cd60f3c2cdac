package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spoolyard.analysis.experiment.Difference;
import spoolyard.analysis.experiment.Interval;

/** The tables of a comparison, row by row, the header first. */
final class ComparisonCsv {
    private static final List<String> KEYS = List.of("letter", "alternative");

    private final Comparison comparison;

    ComparisonCsv(Comparison comparison) {
        this.comparison = comparison;
    }

    /**
     * A row for each alternative and measure.
     *
     * @return rows of text
     */
    List<List<String>> differences() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "letter",
                "alternative",
                "measure",
                "base_mean",
                "mean",
                "difference",
                "difference_low",
                "difference_high",
                "verdict",
                "variance_ratio"));
        for (int plant = 1; plant < comparison.plants().size(); plant++) {
            for (Measure measure : comparison.measures()) {
                rows.add(difference(plant, measure));
            }
        }
        return rows;
    }

    /**
     * A row for each plant, the base included.
     *
     * @return rows of text
     */
    List<List<String>> alternatives() {
        List<List<String>> rows = new ArrayList<>();
        List<String> header = new ArrayList<>(KEYS);
        comparison.measures().forEach(measure -> {
            header.add(measure.fileName());
            header.add(measure.fileName() + "_half_width");
        });
        rows.add(header);
        for (int plant = 0; plant < comparison.plants().size(); plant++) {
            List<String> row = keys(plant);
            for (Measure measure : comparison.measures()) {
                Interval mean = comparison.mean(plant, measure);
                row.add(Figures.cell(mean.mean()));
                row.add(Figures.cell(mean.halfWidth().orElse(Double.NaN)));
            }
            rows.add(row);
        }
        return rows;
    }

    /**
     * Every single observation, so that anybody can check the rest.
     *
     * @return rows of text
     */
    List<List<String>> replications() {
        List<List<String>> rows = new ArrayList<>();
        List<String> header = new ArrayList<>(KEYS);
        header.add("replication");
        comparison.measures().forEach(measure -> header.add(measure.fileName()));
        rows.add(header);
        for (int replication = 0; replication < comparison.replications(); replication++) {
            for (int plant = 0; plant < comparison.plants().size(); plant++) {
                rows.add(observation(plant, replication));
            }
        }
        return rows;
    }

    private List<String> difference(int plant, Measure measure) {
        Difference difference = comparison.difference(plant, measure);
        List<String> row = keys(plant);
        row.add(measure.fileName());
        row.add(Figures.cell(difference.baseMean()));
        row.add(Figures.cell(difference.mean()));
        row.add(Figures.cell(difference.interval().mean()));
        row.add(Figures.cell(difference.low()));
        row.add(Figures.cell(difference.high()));
        row.add(difference.verdict().name().toLowerCase(Locale.ROOT));
        row.add(Figures.cell(difference.varianceRatio()));
        return row;
    }

    private List<String> observation(int plant, int replication) {
        List<String> row = keys(plant);
        row.add(String.valueOf(replication));
        comparison.measures().forEach(measure -> row.add(Figures.cell(comparison.value(plant, measure, replication))));
        return row;
    }

    private List<String> keys(int plant) {
        return new ArrayList<>(
                List.of(Comparison.letter(plant), comparison.plants().get(plant).name()));
    }
}
