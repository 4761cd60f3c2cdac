package spoolyard.analysis.cli;

import java.util.ArrayList;
import java.util.List;
import spoolyard.analysis.schedule.Candidate;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.schedule.WeightVariant;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.SearchLimit;
import spoolyard.analysis.sequence.Stop;
import spoolyard.analysis.sequence.TimedPlan;

/**
 * Searches with other weights for plans that are clearly different from the best on paper. Immutable.
 *
 * @param book the order book, by the weights asked for
 * @param search how to search
 * @param stop ends it early
 * @param console where progress may be shown
 */
record RobustSearch(PlantBook book, SearchOptions search, Stop stop, Console console) {
    /** Each of the searches for other plans takes this share of the limit of the first. */
    private static final double SHARE = 0.25;

    /**
     * Searches.
     *
     * @param best the best on paper
     * @param most how many plans at most
     * @return that plan first, then others, the cheaper first
     */
    List<Candidate> candidates(PlanFigures best, int most) {
        List<Candidate> pool = new ArrayList<>();
        pool.add(new Candidate("as asked", best));
        List<WeightVariant> variants = WeightVariant.of(book.weights());
        for (int i = 0; i < variants.size(); i++) {
            pool.add(candidate(variants.get(i), i + 1, best));
        }
        return Candidate.different(pool, most);
    }

    private Candidate candidate(WeightVariant variant, int number, PlanFigures best) {
        PlantBook other = book.with(variant.weights());
        List<Plan> starts = List.of(best.timed().plan());
        SearchLimit limit = search.limit(other.problem().jobs().size()).times(SHARE);
        Plan found = SearchOptions.find(other.problem(), starts, search.settings(limit, number), stop, console)
                .plan()
                .plan();
        return new Candidate(variant.name(), PlanFigures.of("this plan", book, TimedPlan.of(book.problem(), found)));
    }
}
