package spoolyard.analysis.report;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import spoolyard.analysis.schedule.ChangeoverEstimate;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;
import spoolyard.core.plant.Order;
import spoolyard.core.quantity.Ticks;

/**
 * Writes a plan as a table for people and as a variation of the scenario that runs it. Immutable.
 *
 * @param plan the plan
 * @param clock the plant's clock
 */
public record PlanFiles(PlanFigures plan, PlantClock clock) {
    private static final List<String> COLUMNS = List.of(
            "line",
            "place",
            "order_id",
            "polymer",
            "colour",
            "colour_name",
            "diameter_mm",
            "spool_kg",
            "spools",
            "changeover_start_local",
            "making_start_local",
            "end_local",
            "due_local",
            "late_days",
            "purge_kg",
            "changeover_min",
            "crew_min");
    private static final double S_PER_DAY = 86_400;

    /**
     * One row an order, line by line.
     *
     * @return the text of the table
     */
    public String table() {
        StringWriter out = new StringWriter();
        try {
            CsvTable.FORMAT.printRecord(out, COLUMNS.toArray());
            for (int line = 0; line < plan.timed().lines().size(); line++) {
                List<TimedJob> jobs = plan.timed().lines().get(line);
                for (int place = 0; place < jobs.size(); place++) {
                    CsvTable.FORMAT.printRecord(
                            out, row(line, place, jobs.get(place)).toArray());
                }
            }
        } catch (IOException cannotBe) {
            throw new UncheckedIOException(cannotBe);
        }
        return out.toString();
    }

    private List<String> row(int line, int place, TimedJob job) {
        Order order = plan.order(job);
        ChangeoverEstimate change = plan.before(line, job);
        return List.of(
                plan.book().plant().lines().get(line).name(),
                Integer.toString(place + 1),
                order.id(),
                order.product().polymer().code(),
                order.product().colour().code(),
                order.product().colour().name(),
                Figures.cell(order.product().diameterMm()),
                Figures.cell(order.product().spoolKg()),
                Integer.toString(order.spools()),
                minute(job.startS()),
                minute(job.makingS()),
                minute(job.endS()),
                clock.minute(order.dueTick()),
                Figures.cell(plan.lateS(job) / S_PER_DAY),
                Figures.cell(change.purgeKg() + change.compoundKg()),
                Figures.cell(change.lineS() / 60),
                Figures.cell(change.crewS() / 60));
    }

    private String minute(double seconds) {
        return clock.minute(Math.round(seconds * Ticks.PER_SECOND));
    }

    /**
     * A variation that makes the orders as a table of the same folder says.
     *
     * @param to folder of the variation
     * @param scenario what it varies, as a path from where the program was started
     * @param table file name of the table
     * @return the text of the variation
     */
    public static String variation(Path to, Path scenario, String table) {
        Path folder = to.toAbsolutePath().normalize();
        Path base = scenario.toAbsolutePath().normalize();
        String shown = shown(folder, base).replace("\\", "/").replace("\"", "\\\"");
        return "# The scenario with its orders in the sequence of " + table + ".\nbase: \"" + shown
                + "\"\norders:\n  rule: given sequence\n  sequence: " + table + "\n";
    }

    private static String shown(Path folder, Path base) {
        return folder.getRoot().equals(base.getRoot()) ? folder.relativize(base).toString() : base.toString();
    }
}
