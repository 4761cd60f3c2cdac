package spoolyard.analysis.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spoolyard.analysis.crew.CrewRow;
import spoolyard.analysis.crew.CrewView;
import spoolyard.analysis.crew.PublishedCurve;
import spoolyard.analysis.crew.Staffing;
import spoolyard.analysis.experiment.Difference;
import spoolyard.analysis.experiment.Interval;

/** Winders under more and fewer people, for a screen and a spreadsheet. */
public final class CrewViewTable {
    private static final double BUSY_LIMIT = 0.85;
    private static final int PEOPLE = 8;
    private static final int RATIO = 6;
    private static final int MEAN = 6;
    private static final int HALF = 7;
    private static final int CURVE = 7;

    private final CrewView view;

    /**
     * Prepares to show.
     *
     * @param view what
     */
    public CrewViewTable(CrewView view) {
        this.view = view;
    }

    /**
     * For a screen.
     *
     * @param ink what it can show
     * @return lines of text
     */
    public List<String> lines(Ink ink) {
        Cell cell = new Cell(ink);
        List<String> lines = new ArrayList<>();
        lines.addAll(heading(ink));
        view.rows().forEach(row -> lines.add(row(row, cell)));
        lines.add("");
        lines.add(ink.strong(sentence(cell)));
        busyOnes().ifPresent(lines::add);
        lines.add("");
        lines.addAll(assumptions().stream().map(ink::faint).toList());
        lines.addAll(Cautions.LINES.stream().map(ink::faint).toList());
        return lines;
    }

    private List<String> heading(Ink ink) {
        String names = Cell.left(view.staffing().roleName(), PEOPLE)
                + Cell.right("N/c", RATIO)
                + paired("efficiency")
                + paired("wait")
                + paired("busy").substring(1)
                + paired("overflow")
                + " " + paired("spools")
                + Cell.right("M/M/c", CURVE)
                + Cell.right("M/M/1", CURVE)
                + Cell.right("M/D/1", CURVE);
        String units = Cell.left("a shift", PEOPLE)
                + Cell.right("", RATIO)
                + paired("%")
                + paired("s")
                + paired("%").substring(1)
                + paired("% swaps")
                + " " + paired("a day")
                + Cell.right("pool", CURVE)
                + Cell.right("own", CURVE)
                + Cell.right("own", CURVE);
        return List.of(ink.strong(names), ink.faint(units));
    }

    private static String paired(String title) {
        int width = MEAN + HALF;
        return Cell.left(Cell.right(title, Math.min(width, Math.max(MEAN, (width + title.length()) / 2))), width);
    }

    private String row(CrewRow row, Cell cell) {
        StringBuilder text = new StringBuilder(Cell.left(row.people() + (isNow(row) ? " now" : ""), PEOPLE))
                .append(Cell.right(Figures.shown(windersEach(row), 1), RATIO))
                .append(cell.aligned(row.efficiency().times(100), 2, MEAN, HALF))
                .append(cell.aligned(row.waitS(), 1, MEAN, HALF))
                .append(cell.aligned(row.busyShare().times(100), 1, MEAN, HALF - 1))
                .append(cell.aligned(row.overflowShare().times(100), 2, MEAN, HALF))
                .append(cell.aligned(row.goodPerDay().interval(), 0, MEAN + 1, HALF));
        for (PublishedCurve curve : PublishedCurve.values()) {
            text.append(Cell.right(published(curve, row.people()), CURVE));
        }
        return text.toString().stripTrailing();
    }

    private String published(PublishedCurve curve, int people) {
        return view.load().isSound() ? Figures.shown(100 * curve.efficiency(view.load(), people), 2) : "-";
    }

    private boolean isNow(CrewRow row) {
        Staffing now = view.staffing();
        return now.fewest() == row.people() && now.most() == row.people();
    }

    private double windersEach(CrewRow row) {
        return view.staffing().winders() / (double) row.people();
    }

    /** The fewest people whose plant makes no fewer spools that can be told. */
    private String sentence(Cell cell) {
        Optional<CrewRow> fewest = view.rows().stream()
                .filter(row -> row.goodPerDay().verdict() != Difference.Verdict.LESS)
                .findFirst();
        String role = view.staffing().roleName();
        return fewest.map(row -> "Fewest of the role " + role + " without a loss of good spools that can be told: "
                        + row.people() + ", " + cell.text(row.goodPerDay().interval(), 1) + " a day.")
                .orElse("Every number of people asked about makes fewer good spools than the plant as it is.");
    }

    private Optional<String> busyOnes() {
        List<String> busy = view.rows().stream()
                .filter(row -> row.busyShare().mean() > BUSY_LIMIT)
                .map(row -> Integer.toString(row.people()))
                .toList();
        return busy.isEmpty()
                ? Optional.empty()
                : Optional.of("Busy more than 85 % of the time with " + String.join(", ", busy)
                        + ": a limit of safety, not of output. docs/cautions.md");
    }

    private List<String> assumptions() {
        List<String> lines = new ArrayList<>();
        lines.add(
                "N/c: winders for each. Efficiency: winder time without a call that waits. Spools: good ones against");
        lines.add("the plant as it is, intervals joint, the others each at 95 %; the same luck in all rows.");
        if (view.load().isSound()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "Published, with N = %d, run U = %.0f s, work T = %.1f s, X = T/(T+U) = %.4f of the plant as it is:",
                    view.load().winders(),
                    view.load().runS(),
                    view.load().workS(),
                    view.load().serviceFactor()));
            for (PublishedCurve curve : PublishedCurve.values()) {
                lines.add("  " + curve.label() + ": " + curve.assumes());
            }
            lines.add("  no breaks, walks within T, all calls alike, runs exponential. docs/buffer.md#the-crew");
        } else {
            lines.add("No published curves: nothing calls, or there is more work than time.");
        }
        return lines;
    }

    /**
     * For a spreadsheet.
     *
     * @return CSV with a heading
     */
    public String csv() {
        StringBuilder csv = new StringBuilder();
        try {
            CsvTable.FORMAT.printRecord(csv, header().toArray());
            for (CrewRow row : view.rows()) {
                CsvTable.FORMAT.printRecord(csv, cells(row).toArray());
            }
        } catch (IOException impossibleInMemory) {
            throw new UncheckedIOException(impossibleInMemory);
        }
        return csv.toString();
    }

    private static List<String> header() {
        List<String> header = new ArrayList<>(List.of("people", "winders_each"));
        for (String name : List.of(
                "efficiency_pct", "wait_s", "busy_pct", "overflow_pct_of_swaps", "good_spools_per_day_against_now")) {
            header.addAll(List.of(name, name + "_half_width"));
        }
        for (PublishedCurve curve : PublishedCurve.values()) {
            header.add("efficiency_" + curve.name().toLowerCase(Locale.ROOT) + "_pct");
        }
        return header;
    }

    private List<String> cells(CrewRow row) {
        List<String> cells = new ArrayList<>(List.of(Integer.toString(row.people()), Figures.cell(windersEach(row))));
        for (Interval interval : List.of(
                row.efficiency().times(100),
                row.waitS(),
                row.busyShare().times(100),
                row.overflowShare().times(100),
                row.goodPerDay().interval())) {
            cells.add(Figures.cell(interval.mean()));
            cells.add(Figures.cell(interval.halfWidth().orElse(Double.NaN)));
        }
        for (PublishedCurve curve : PublishedCurve.values()) {
            cells.add(view.load().isSound() ? Figures.cell(100 * curve.efficiency(view.load(), row.people())) : "");
        }
        return cells;
    }
}
