package spoolyard.analysis.cli;

import java.util.List;
import spoolyard.analysis.report.PlanChangeText;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.SequenceReport;
import spoolyard.analysis.schedule.Baselines;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.Solution;
import spoolyard.analysis.sequence.TimedPlan;

/**
 * A plan that is there, before and after a change by hand. Immutable.
 *
 * @param before the plan as it is
 * @param after the plan as it would be
 * @param moved ids of the orders that somebody moves; none: the plan is only shown
 */
record WhatIf(PlanFigures before, PlanFigures after, List<String> moved) {
    /** Copies the list. */
    WhatIf {
        moved = List.copyOf(moved);
    }

    /**
     * Changes the plan.
     *
     * @param book the order book
     * @param options what is to be changed
     * @return both plans
     * @throws InputException if there is no plan, or a change cannot be made
     */
    static WhatIf of(PlantBook book, WhatIfOptions options) throws InputException {
        Plan before = options.before(book);
        Plan after = options.after(book, before);
        return new WhatIf(figures("before", book, before), figures("this plan", book, after), options.moved(book));
    }

    private static PlanFigures figures(String name, PlantBook book, Plan plan) {
        return PlanFigures.of(name, book, TimedPlan.of(book.problem(), plan));
    }

    /** Tells the change and what it costs, or the plan. */
    void tell(PlantClock clock, Console console) {
        List<PlanFigures> rules = Baselines.of(after.book()).stream()
                .filter(plan -> !plan.name().endsWith("(today)"))
                .toList();
        SequenceReport report = new SequenceReport(after, rules, new Solution(after.timed(), 0, false), clock);
        if (moved.isEmpty()) {
            report.perLine(console.ink()).forEach(console.out()::println);
            report.comparison(console.ink()).forEach(console.out()::println);
            return;
        }
        PlanChangeText text = new PlanChangeText(before, after, moved, clock);
        for (int line : text.changedLines()) {
            report.line(line, console.ink()).forEach(console.out()::println);
        }
        text.lines(console.ink()).forEach(console.out()::println);
    }
}
