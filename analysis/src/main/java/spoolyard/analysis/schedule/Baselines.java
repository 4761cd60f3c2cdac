package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.TimedPlan;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.policy.DueDateFirst;
import spoolyard.core.policy.LeastPurgeNext;
import spoolyard.core.policy.LightestNext;

/** The plans that a sequence is compared with: today's, and what the plain dispatch rules make. */
public final class Baselines {
    private Baselines() {}

    /**
     * All of them.
     *
     * @param book the order book
     * @return by due date, light to dark, least purge; before them the given sequence, if the plant has one that holds every
     *     order
     */
    public static List<PlanFigures> of(PlantBook book) {
        List<PlanFigures> plans = new ArrayList<>();
        given(book).ifPresent(plan -> plans.add(figures("given sequence (today)", book, plan)));
        plans.add(figures(
                name("due date first", DispatchRule.DUE_DATE_FIRST, book),
                book,
                Dispatch.plan(book, new DueDateFirst())));
        plans.add(figures(
                name("lightest next", DispatchRule.LIGHTEST_NEXT, book),
                book,
                Dispatch.plan(book, new LightestNext())));
        plans.add(figures(
                name("least purge next", DispatchRule.LEAST_PURGE_NEXT, book),
                book,
                Dispatch.plan(book, new LeastPurgeNext())));
        return plans;
    }

    private static PlanFigures figures(String name, PlantBook book, Plan plan) {
        return PlanFigures.of(name, book, TimedPlan.of(book.problem(), plan));
    }

    private static String name(String rule, DispatchRule which, PlantBook book) {
        return rule + (book.plant().book().rule() == which ? " (today)" : "");
    }

    private static Optional<Plan> given(PlantBook book) {
        boolean isFrozen =
                book.problem().lines().stream().anyMatch(line -> !line.frozen().isEmpty());
        return isFrozen ? Optional.empty() : GivenPlan.of(book);
    }
}
