package spoolyard.analysis.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.analysis.schedule.FrontierPoint;

/**
 * What promptness costs in purge, for spreadsheets and programs. Immutable.
 *
 * @param report the points
 */
public record FrontierFiles(FrontierReport report) {
    /** Marks the JSON as ours and says which form it has. */
    public static final String FORMAT = "spoolyard-results/frontier/1";

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final double S_PER_H = 3600;

    /**
     * All points as CSV.
     *
     * @return a row a point, from the least purge on, with a header; the letter of those that are shown
     */
    public String csv() {
        StringBuilder text =
                new StringBuilder("point," + String.join(",", numbers(0).keySet()) + "\n");
        for (int i = 0; i < report.frontier().points().size(); i++) {
            text.append(letter(i));
            numbers(i).values().forEach(value -> text.append(',').append(Figures.cell(value)));
            text.append('\n');
        }
        return text.toString();
    }

    /**
     * All points as JSON.
     *
     * @param seed of the search
     * @return two spaces to a level, with a final line break
     */
    public String json(long seed) {
        FrontierPoint first = report.frontier().points().get(0);
        ObjectNode root = NODES.objectNode();
        root.put("format", FORMAT);
        root.put("plant", first.plan().book().plant().name());
        root.put("seed", seed);
        root.put("proved", report.frontier().isExact());
        root.set("reserve_h", JsonText.number(first.plan().book().weights().reserveH()));
        ArrayNode sentences = root.putArray("sentences");
        report.said().forEach(sentences::add);
        ArrayNode points = root.putArray("points");
        for (int i = 0; i < report.frontier().points().size(); i++) {
            ObjectNode point = points.addObject();
            point.put("point", letter(i));
            numbers(i).forEach((name, value) -> point.set(name, JsonText.number(value)));
        }
        return JsonText.written(root);
    }

    private String letter(int point) {
        int shown = report.shown().indexOf(report.frontier().points().get(point));
        return shown < 0 ? "" : FrontierReport.letter(shown);
    }

    private Map<String, Double> numbers(int number) {
        List<FrontierPoint> all = report.frontier().points();
        FrontierPoint point = all.get(number);
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers.put("purge_kg", point.purgeKg());
        numbers.put("late_spool_days", point.lateSpoolDays());
        numbers.put("kg_per_spool_day", number == 0 ? Double.NaN : point.kgPerSpoolDay(all.get(number - 1)));
        numbers.put("late_orders", (double) point.plan().lateOrders());
        numbers.put("spool_days_past_due", point.plan().lateSpoolDays());
        numbers.put("changeover_h", point.plan().changeovers().lineS() / S_PER_H);
        numbers.put("cost", point.plan().timed().cost());
        return numbers;
    }
}
