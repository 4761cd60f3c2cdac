package spoolyard.analysis.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import picocli.CommandLine.Option;
import spoolyard.analysis.purge.PurgeMatrix;
import spoolyard.analysis.purge.PurgeSurvey;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.Scenario;

/** The line and polymer whose purges are asked for. */
final class PurgeChoice {
    @Option(
            names = "--line",
            paramLabel = "LINE",
            description = "The line to show. The first that makes the polymer, if not given.")
    private String line;

    @Option(
            names = "--polymer",
            paramLabel = "POLYMER",
            description = "The polymer to show. The one ordered most, if not given.")
    private String polymer;

    /**
     * Whether neither was given.
     *
     * @return true if all lines are asked for
     */
    boolean isOpen() {
        return line == null && polymer == null;
    }

    /**
     * The purges of the line and polymer asked for, or of all.
     *
     * @param read the scenario
     * @return at least one
     * @throws InputException if there is no such line or polymer
     */
    List<PurgeMatrix> matrices(Scenario read) throws InputException {
        requireName("line", line, read.plant().lines().stream().map(Line::name).toList());
        requireName(
                "polymer",
                polymer,
                read.purge().polymers().stream().map(Polymer::code).toList());
        PurgeSurvey survey = new PurgeSurvey(read.plant(), read.purge());
        List<PurgeMatrix> matrices = new ArrayList<>();
        for (Line each : read.plant().lines()) {
            if (line == null || each.name().equals(line)) {
                survey.polymersOn(each).stream()
                        .filter(on -> polymer == null || on.code().equals(polymer))
                        .forEach(on -> matrices.add(survey.matrix(each, on)));
            }
        }
        if (matrices.isEmpty()) {
            throw new InputException(
                    isOpen() ? "SCENARIO" : "--line = " + line + ", --polymer = " + polymer,
                    "Must be a line and a polymer that it makes, with colours that are offered in it.",
                    "give another line or polymer");
        }
        return matrices;
    }

    private static void requireName(String what, String given, Collection<String> known) throws InputException {
        if (given != null && !known.contains(given)) {
            throw new InputException(
                    "--" + what + " = " + given,
                    "Must be a " + what + " of this plant: " + String.join(", ", known) + ".",
                    "give one of these");
        }
    }

    /**
     * The one to show.
     *
     * @param read the scenario
     * @param matrices those asked for
     * @return of what is ordered most, on the first line that makes it
     */
    static PurgeMatrix shown(Scenario read, List<PurgeMatrix> matrices) {
        return matrices.stream()
                .max(Comparator.comparingDouble((PurgeMatrix matrix) -> orderedKg(read, matrix.polymer()))
                        .thenComparingInt(matrix -> -matrices.indexOf(matrix)))
                .orElseThrow();
    }

    private static double orderedKg(Scenario read, Polymer polymer) {
        return read.plant().book().orders().stream()
                .filter(order -> order.product().polymer().code().equals(polymer.code()))
                .mapToDouble(PurgeChoice::massKg)
                .sum();
    }

    private static double massKg(Order order) {
        return order.spools() * order.product().spoolKg();
    }
}
