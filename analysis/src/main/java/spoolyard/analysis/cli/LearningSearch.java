package spoolyard.analysis.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.analysis.schedule.Baselines;
import spoolyard.analysis.schedule.Experience;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.Solution;
import spoolyard.analysis.sequence.Stop;
import spoolyard.core.plant.Plant;

/**
 * Searches, runs what was found, learns from the run and searches again. The first lesson is today's order. The limit of the
 * search is shared by all rounds. The bound of the last plan is then raised.
 */
final class LearningSearch {
    /** Most rounds of learning. */
    static final int MOST_ROUNDS = 20;

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
     */
    record Found(PlantBook book, Solution solution) {
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
        Found found = null;
        for (int round = 0; round == 0 || round < rounds && !stop.isAsked(); round++) {
            Experience experience = rounds == 0 ? Experience.NONE : learned(plain, Optional.ofNullable(found));
            PlantBook book = plain.with(experience);
            found = new Found(book, search(book, Optional.ofNullable(found), stop));
        }
        return new Found(found.book(), search.bounded(found.book().problem(), found.solution(), stop, console));
    }

    private Experience learned(PlantBook plain, Optional<Found> before) {
        Plant tried = before.map(found -> found.plan().asGiven()).orElse(plain.plant());
        school.attend(tried);
        return school.experience(plain);
    }

    private Solution search(PlantBook book, Optional<Found> before, Stop stop) {
        List<Plan> starts = new ArrayList<>();
        before.ifPresent(found -> starts.add(found.solution().plan().plan()));
        Baselines.of(book).forEach(other -> starts.add(other.timed().plan()));
        double share = 1.0 / Math.max(1, rounds);
        return SearchOptions.solve(book.problem(), starts, search.settings(share, 0), stop, console);
    }
}
