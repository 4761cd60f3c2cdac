package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import spoolyard.analysis.experiment.Difference;

/** What the data say about an alternative, in plain sentences. */
final class Answer {
    private final Comparison comparison;
    private final int plant;

    /**
     * About an alternative.
     *
     * @param comparison with the data
     * @param plant number of the alternative, from 1
     */
    Answer(Comparison comparison, int plant) {
        this.comparison = comparison;
        this.plant = plant;
    }

    /**
     * The sentences: what matters most first, then the rest, then what the data cannot tell.
     *
     * @return one paragraph that begins with the letter of the alternative
     */
    String text() {
        List<Measure> settled =
                with(verdict -> verdict == Difference.Verdict.MORE || verdict == Difference.Verdict.LESS);
        List<Measure> first =
                settled.stream().filter(Measure.foremost()::contains).toList();
        List<Measure> rest =
                settled.stream().filter(each -> !first.contains(each)).toList();
        List<String> sentences = new ArrayList<>();
        addClauses(sentences, Comparison.letter(plant) + " ", first, " than the base");
        addClauses(sentences, sentences.isEmpty() ? Comparison.letter(plant) + " " : "It ", rest, "");
        addOpen(sentences);
        addSame(sentences);
        return String.join(" ", sentences);
    }

    private List<Measure> with(Predicate<Difference.Verdict> wanted) {
        return comparison.measures().stream()
                .filter(measure ->
                        wanted.test(comparison.difference(plant, measure).verdict()))
                .toList();
    }

    private void addClauses(List<String> sentences, String subject, List<Measure> measures, String afterFirst) {
        if (measures.isEmpty()) {
            return;
        }
        List<String> clauses = new ArrayList<>(measures.stream()
                .map(measure -> measure.clause(Spread.of(comparison.difference(plant, measure))))
                .toList());
        clauses.set(0, clauses.get(0) + afterFirst);
        sentences.add(subject + joined(clauses) + ".");
    }

    private void addOpen(List<String> sentences) {
        List<String> open = with(verdict -> verdict == Difference.Verdict.OPEN).stream()
                .map(Measure::inWords)
                .toList();
        if (!open.isEmpty()) {
            String which = open.size() == comparison.measures().size() ? "anything" : joined(open);
            String letter = Comparison.letter(plant);
            sentences.add(
                    sentences.isEmpty()
                            ? letter + ": the data cannot tell whether it differs from the base in " + which + "."
                            : "The data cannot tell whether it differs in " + which + ".");
        }
    }

    private void addSame(List<String> sentences) {
        List<String> same = with(verdict -> verdict == Difference.Verdict.SAME).stream()
                .map(Measure::inWords)
                .toList();
        if (same.size() == comparison.measures().size()) {
            sentences.add(Comparison.letter(plant) + " is the same as the base in every replication.");
        } else if (!same.isEmpty()) {
            sentences.add("No replication differs in " + joined(same) + ".");
        }
    }

    private static String joined(List<String> parts) {
        int last = parts.size() - 1;
        if (last == 0) {
            return parts.get(0);
        }
        return String.join(", ", parts.subList(0, last)) + (last > 1 ? ", and " : " and ") + parts.get(last);
    }
}
