package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.TimedPlan;

/**
 * One line; three orders of 22.4014 h each (400 spools of 1 kg at 18 kg/h, 0.8 % rejected), due at 21.33, 42.67 and 64 h;
 * nothing between them. Lateness costs 0.5 a spool and day from 24 h before the due date.
 *
 * <p>In book order they are ready at 22.40, 44.80 and 67.20 h: 1.07, 2.14 and 3.20 h late, 106.8 spool-days; 25.07, 26.14 and
 * 27.20 h by the reserve, 78.41 h times 400 times 0.5 / 24 = 653. With the third first: it is ready at 22.40 h, in time; the
 * others at 44.80 and 67.20 h, 23.47 and 24.54 h late, 800.1 spool-days; 47.47 and 48.54 h by the reserve, 800.
 */
final class PlanChangeTextTest {
    private static PlanChangeText thirdFirst() {
        PlanFigures before = SamplePlans.of(SamplePlant.ofHours(1, 64), Map.of());
        TimedPlan changed = TimedPlan.of(before.book().problem(), new Plan(List.of(List.of(2, 0, 1))));
        PlanFigures after = PlanFigures.of("after", before.book(), changed);
        return new PlanChangeText(before, after, List.of("SO-3"), SamplePlans.CLOCK);
    }

    @Test
    void tellsTheCostOfAChangeWorkedByHand() {
        assertThat(thirdFirst().lines(Ink.PLAIN))
                .containsExactly(
                        "Sample works: change of a plan",
                        "SO-3 goes from L1, place 3, to L1, place 1: ready 2027-03-02 04:24, 1.7 days before it is due",
                        "  (before: 2027-03-04 01:12, 0.1 days late).",
                        "",
                        "                                before       after      change",
                        "cost                               653         800        +147",
                        "purge kg                           0.0         0.0         0.0",
                        "line hours of changeover           0.0         0.0         0.0",
                        "hours of work                      0.0         0.0         0.0",
                        "changeovers                          0           0           0",
                        "late orders                          3           2          -1",
                        "late spool-days                    107         800        +693",
                        "",
                        "Become late: none.",
                        "Get in time: SO-3 (0.1 days).",
                        "Later still: SO-1 (0.9 days), SO-2 (0.9 days).",
                        "By these weights the change costs 147: 0 more in changeovers, 147 more in lateness, which counts",
                        "  from 24 h before an order is due.",
                        "");
    }

    @Test
    void knowsTheLinesThatChange() {
        PlanFigures plan = SamplePlans.of(SamplePlant.ofHours(2, 64), Map.of());
        TimedPlan changed = TimedPlan.of(plan.book().problem(), new Plan(List.of(List.of(0, 2, 4), List.of(3, 1, 5))));
        PlanFigures after = PlanFigures.of("after", plan.book(), changed);

        assertThat(new PlanChangeText(plan, after, List.of("SO-4"), SamplePlans.CLOCK).changedLines())
                .containsExactly(1);
        assertThat(new PlanChangeText(plan, plan, List.of("SO-4"), SamplePlans.CLOCK).changedLines())
                .isEmpty();
    }
}
