package spoolyard.analysis.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import spoolyard.analysis.schedule.PlacedOrder;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.core.colour.Viewing;

/**
 * A plan on paper for the floor: a page for each line, and all of them in one file to be printed at once. Immutable.
 *
 * @param plan the plan
 * @param clock the plant's clock
 * @param viewing light of the colours' L*a*b*
 */
public record FloorPages(PlanFigures plan, PlantClock clock, Viewing viewing) {
    private static final String ALL = "all-lines";

    /**
     * The pages.
     *
     * @return HTML by file name: for line {@code L3} it is {@code L3.html} (what no file name can hold becomes an underscore),
     *     and {@code all-lines.html}
     */
    public Map<String, String> byFile() {
        List<List<PlacedOrder>> lines = PlacedOrder.all(plan);
        String plant = plan.book().plant().name();
        List<String> sections = IntStream.range(0, lines.size())
                .mapToObj(line -> new FloorSection(plan, line, clock, viewing).html(lines.get(line)))
                .toList();
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put(ALL + ".html", Html.page("All lines, " + plant, sections));
        for (int line = 0; line < lines.size(); line++) {
            String name = plan.book().plant().lines().get(line).name();
            pages.put(fileName(name, pages), Html.page(name + ", " + plant, List.of(sections.get(line))));
        }
        return pages;
    }

    /** Distinct also where file names do not tell capitals from small letters. */
    private static String fileName(String line, Map<String, String> taken) {
        String plain = line.replaceAll("[^\\p{L}\\p{N}_-]", "_");
        String name = plain + ".html";
        for (int i = 2; isTaken(name, taken); i++) {
            name = plain + "-" + i + ".html";
        }
        return name;
    }

    private static boolean isTaken(String name, Map<String, String> taken) {
        String small = name.toLowerCase(Locale.ROOT);
        return taken.keySet().stream()
                .anyMatch(each -> each.toLowerCase(Locale.ROOT).equals(small));
    }
}
