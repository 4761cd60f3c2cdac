package spoolyard.analysis.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.analysis.schedule.Baselines;
import spoolyard.analysis.schedule.Experience;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.SearchLimit;
import spoolyard.analysis.sequence.Solution;
import spoolyard.analysis.sequence.Stop;
import spoolyard.core.plant.Plant;

/**
 * Searches, runs what was found, learns from the run and searches again. The first lesson is today's order. The limit of the
 * search is shared by all rounds; seconds are those of the lessons too. The bound of the last plan is then raised.
 */
final class LearningSearch {
    /** Most rounds of learning. */
    static final int MOST_ROUNDS = 20;

    /** Each lesson takes this share of the limit at most, and each search the other at least. */
    private static final double LESSON_SHARE = 0.15;

    private static final double LEAST_SHARE = 0.1;

    private final Console console;
    private final School school;
    private final SearchOptions search;
    private final int rounds;

    /**
     * A search that has not begun.
     *
     * @param console where it tells how far it is
     * @param simulator makes replications
     * @param search how to search, all rounds together
     * @param rounds how often it learns; 0 for one search with times as reckoned
     */
    LearningSearch(Console console, Simulator simulator, SearchOptions search, int rounds) {
        this.console = console;
        this.school = new School(simulator, search.seed());
        this.search = search;
        this.rounds = rounds;
    }

    /**
     * What was found.
     *
     * @param book the book with the times of the last search
     * @param solution what that search found
     * @param baselines what it is compared with, by the same times
     * @param learnedFrom a sentence about how much was simulated to learn from; empty if as much as there should be
     */
    record Found(PlantBook book, Solution solution, List<PlanFigures> baselines, Optional<String> learnedFrom) {
        PlanFigures plan() {
            return PlanFigures.of("this plan", book, solution.plan());
        }
    }

    /**
     * Searches.
     *
     * @param plain the book as reckoned
     * @param stop ends it early, after the first search at the latest
     * @return the last plan
     */
    Found run(PlantBook plain, Stop stop) {
        SearchLimit whole = search.limit(plain.problem().jobs().size());
        long began = System.nanoTime();
        Optional<Found> found = Optional.empty();
        int searches = Math.max(1, rounds);
        for (int round = 0; round == 0 || round < searches && !stop.isAsked(); round++) {
            Experience experience = rounds == 0 ? Experience.NONE : learned(plain, found, whole, stop);
            PlantBook book = plain.with(experience);
            double leftS = Math.max(LEAST_SHARE * whole.seconds(), whole.seconds() - secondsSince(began));
            double share = 1.0 / searches;
            SearchLimit limit = new SearchLimit(share * whole.iterations(), leftS / (searches - round));
            found = Optional.of(search(book, found, limit, stop));
        }
        return bounded(found.orElseThrow(), stop);
    }

    private Found bounded(Found found, Stop stop) {
        Solution solution = search.bounded(found.book.problem(), found.solution, stop, console);
        return new Found(found.book, solution, found.baselines, found.learnedFrom);
    }

    private static double secondsSince(long began) {
        return (System.nanoTime() - began) * 1e-9;
    }

    private Experience learned(PlantBook plain, Optional<Found> before, SearchLimit whole, Stop stop) {
        Plant tried = before.map(found -> found.plan().asGiven()).orElse(plain.plant());
        Optional<Duration> time = whole.seconds() < Double.POSITIVE_INFINITY
                ? Optional.of(Duration.ofMillis((long) (1000 * LESSON_SHARE * whole.seconds())))
                : Optional.empty();
        SearchLine line = new SearchLine(console);
        school.attend(tried, time, stop, line::learning);
        line.clear();
        return school.experience(plain);
    }

    private Found search(PlantBook book, Optional<Found> before, SearchLimit limit, Stop stop) {
        List<Plan> starts = new ArrayList<>();
        before.ifPresent(found -> starts.add(found.solution().plan().plan()));
        List<PlanFigures> baselines = Baselines.of(book);
        baselines.forEach(other -> starts.add(other.timed().plan()));
        Solution solution = SearchOptions.find(book.problem(), starts, search.settings(limit, 0), stop, console);
        return new Found(book, solution, baselines, school.told());
    }
}
