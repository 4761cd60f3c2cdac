package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.List;
import spoolyard.analysis.sequence.Changeovers;
import spoolyard.analysis.sequence.Job;
import spoolyard.analysis.sequence.SequencedLine;
import spoolyard.analysis.sequence.SequencingProblem;
import spoolyard.analysis.sequence.WeekEnds;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;

/**
 * An order book in which changeovers cost their kilograms of purge and compound, and lateness its spool-days times the weight of
 * the order, from the reserve before the due date: two parts that are not to be added up.
 */
public final class TradeOffBook {
    private static final double S_PER_DAY = 86_400;

    private TradeOffBook() {}

    /**
     * States the problem.
     *
     * @param book the order book; its money plays no part
     * @return the same orders and lines, by number
     */
    public static SequencingProblem of(PlantBook book) {
        ChangeoverArithmetic arithmetic = new ChangeoverArithmetic(book.plant(), book.weights());
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < book.problem().jobs().size(); i++) {
            Job job = book.problem().jobs().get(i);
            Order order = book.plant().book().orders().get(i);
            double perS = order.spools() * order.weight() / S_PER_DAY;
            jobs.add(new Job(job.id(), job.product(), job.releaseS(), job.dueS(), perS, job.runS()));
        }
        List<SequencedLine> lines = new ArrayList<>();
        for (int i = 0; i < book.problem().lines().size(); i++) {
            SequencedLine line = book.problem().lines().get(i);
            Line of = book.plant().lines().get(i);
            Changeovers kg =
                    PlantBook.changeovers(arithmetic, of, book.products(), each -> each.purgeKg() + each.compoundKg());
            WeekEnds ends = PlantBook.weekEnds(
                    arithmetic,
                    book.plant(),
                    of,
                    book.products(),
                    line.weekEnds().workedS(),
                    ChangeoverEstimate::compoundKg);
            lines.add(new SequencedLine(line.name(), line.hours(), kg, line.frozen(), ends));
        }
        return new SequencingProblem(jobs, lines, 0);
    }
}
