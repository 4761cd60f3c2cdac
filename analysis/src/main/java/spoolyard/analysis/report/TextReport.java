package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.QualityRules;

/**
 * The report on one screen: at most {@value #MOST_LINES} lines of at most {@value #MOST_COLUMNS} characters, whatever the
 * size of the plant. What finds no room is in the files.
 */
public final class TextReport {
    /** Height of the screen. */
    public static final int MOST_LINES = 46;

    /** Width of the screen. */
    public static final int MOST_COLUMNS = 100;

    private static final int HEADING = 3;
    private static final int INDENT = 13;
    private static final int LONGEST_NAME = 12;
    private static final String METHOD = "Roser et al. 2002";
    private static final int MOST_CANDIDATES = 3;

    private final RunReport report;
    private final Ink ink;
    private final Cell cell;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param ink what the screen can show
     */
    public TextReport(RunReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    /**
     * The report.
     *
     * @return lines without line breaks
     */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(
                new ReportHeading(report.provenance(), report.setting(), report.replications()).lines(ink));
        lines.addAll(body());
        return lines;
    }

    /**
     * The report without its heading, which can be shown before the run.
     *
     * @return lines without line breaks
     */
    public List<String> body() {
        List<String> lines = new ArrayList<>();
        lines.addAll(spools());
        lines.addAll(new ScrapList(report, ink).lines());
        excursions().ifPresent(lines::add);
        lines.add(effectiveness());
        lines.addAll(new LossList(report, ink).lines());
        lines.add(orders());
        lines.addAll(overflows());
        lines.addAll(quality());
        new StockLine(report, ink).line().ifPresent(lines::add);
        new RegrindLine(report, ink).line().ifPresent(lines::add);
        lines.add(bottleneck());
        lines.addAll(new EconomyLines(report, ink).lines());
        lines.add("");
        lines.addAll(tables(MOST_LINES - HEADING - lines.size()));
        return lines;
    }

    /** The tables and the cautions, with as many lines of the plant as find room. */
    private List<String> tables(int room) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.addAll(new CrewTable(report, ink).lines());
        lines.add("");
        lines.addAll(Cautions.LINES.stream().map(ink::faint).toList());
        lines.addAll(0, new LineTable(report, ink).lines(room - lines.size()));
        return lines;
    }

    private List<String> spools() {
        Estimates byName = report.table(ShiftSheets.SHIFT_NAMES);
        if (byName.keys().isEmpty()) {
            return List.of(
                    headed("Good spools", all() + ". No shift lies in the run from begin to end, so none per shift."));
        }
        String perShift = cell.text(report.plant(PlantSheet.SPOOLS_PER_SHIFT), 1);
        List<String> parts = byName.keys().stream()
                .map(key -> key.get(0) + " " + cell.text(byName.at(key, ShiftSheets.SPOOLS_PER_SHIFT), 1))
                .toList();
        return List.of(
                headed("Good spools", ink.strong(perShift + " per shift") + "; " + all()),
                headed("", joined(parts, "   ", "shifts in summary.json")));
    }

    private String all() {
        return cell.text(report.plant(PlantSheet.SPOOLS), 0) + " in the whole run";
    }

    private String effectiveness() {
        String factors = cell.text(report.plant(PlantSheet.OEE), 1) + " %";
        return headed(
                "OEE",
                ink.strong(factors) + " = availability " + cell.mean(report.plant(PlantSheet.AVAILABILITY), 1)
                        + " x effectiveness " + cell.mean(report.plant(PlantSheet.EFFECTIVENESS), 1)
                        + " x quality " + cell.mean(report.plant(PlantSheet.QUALITY), 1));
    }

    private List<String> overflows() {
        String causes = "no crew " + cell.mean(report.plant(PlantSheet.NO_CREW), 2)
                + ", swap too slow " + cell.mean(report.plant(PlantSheet.TOO_SLOW), 2)
                + ", level carried over " + cell.mean(report.plant(PlantSheet.CARRIED_OVER), 2)
                + ", rack full " + cell.mean(report.plant(PlantSheet.RACK_FULL), 2);
        String share = ink.strong(cell.text(report.plant(PlantSheet.OVERFLOW), 2) + " %") + " of "
                + cell.mean(report.plant(PlantSheet.SWAPS), 0) + " spool swaps:";
        return List.of(headed("Overflow", share), " ".repeat(INDENT) + causes);
    }

    private String orders() {
        int booked = report.setting().plant().book().orders().size();
        String late = cell.text(report.plant(PlantSheet.LATE), 1) + " of " + booked + " late";
        return headed(
                "Orders",
                ink.strong(late) + "; " + cell.text(report.plant(PlantSheet.ON_TIME), 1) + " % on time; "
                        + cell.text(report.plant(PlantSheet.LATE_SPOOL_DAYS), 0) + " late spool-days");
    }

    /** Lab and exposure clock, if the plant has them. */
    private List<String> quality() {
        QualityRules rules = report.setting().plant().finishing().quality();
        List<String> parts = new ArrayList<>();
        String refused = cell.text(report.plant(PlantSheet.REFUSED), 1) + " of "
                + cell.mean(report.plant(PlantSheet.LOTS), 0) + " lots refused";
        if (rules.lab().isPresent()) {
            parts.add(refused + ", held " + cell.mean(report.plant(PlantSheet.HOLD), 1) + " h");
        }
        if (rules.exposure().isPresent()) {
            parts.add(cell.text(report.plant(PlantSheet.BEYOND), 2) + " % exposed too long");
        }
        if (parts.isEmpty()) {
            return List.of();
        }
        parts.add(cell.mean(report.plant(PlantSheet.LOST), 0) + " lost");
        List<String> lines = new ArrayList<>(Fitted.lines("; ", parts, MOST_COLUMNS - INDENT));
        lines.set(0, headed("Quality", lines.get(0).replace(refused, ink.strong(refused))));
        lines.subList(1, lines.size()).replaceAll(line -> " ".repeat(INDENT) + line);
        return lines;
    }

    /** What the gauges found, on a plant that has any. */
    private Optional<String> excursions() {
        if (report.plant(PlantSheet.EXCURSIONS).mean() == 0) {
            return Optional.empty();
        }
        String found = cell.mean(report.plant(PlantSheet.EXCURSIONS), 0) + " excursions: "
                + cell.mean(report.plant(PlantSheet.CUT_SHORT), 0) + " spools cut short, "
                + cell.text(report.plant(PlantSheet.B_GRADE), 0) + " B-grade, "
                + cell.mean(report.plant(PlantSheet.FLAGGED), 0) + " flagged";
        return Optional.of(headed("Gauge", found));
    }

    private String bottleneck() {
        List<Candidate> ranked = Candidate.ranked(report);
        if (ranked.isEmpty()) {
            return headed("Bottleneck", "none: nothing was ever active");
        }
        Candidate first = ranked.get(0);
        String told = cell.text(first.sharePct(), 0) + " % of the time, alone " + cell.mean(first.solePct(), 0) + " %";
        String rest = "";
        int room = MOST_COLUMNS - INDENT - name(first).length() - told.length() - METHOD.length() - 4;
        for (Candidate next : ranked.subList(1, Math.min(MOST_CANDIDATES, ranked.size()))) {
            String more = (rest.isEmpty() ? "; next " : ", ") + name(next) + " " + cell.mean(next.sharePct(), 0) + " %";
            rest += rest.length() + more.length() <= room ? more : "";
        }
        return headed("Bottleneck", ink.strong(name(first)) + ", " + told + rest + "; " + ink.faint(METHOD));
    }

    private static String name(Candidate candidate) {
        return Cell.clipped(candidate.name(), LONGEST_NAME);
    }

    private String headed(String heading, String text) {
        return ink.strong(Cell.left(heading, INDENT)) + text;
    }

    /** As many parts as find room on the line, then how many do not. */
    private static String joined(List<String> parts, String separator, String where) {
        int room = MOST_COLUMNS - INDENT;
        String whole = String.join(separator, parts);
        Optional<String> shorter = Optional.of(whole).filter(text -> text.length() <= room);
        for (int kept = parts.size() - 1; shorter.isEmpty() && kept >= 0; kept--) {
            String rest = separator + "and " + (parts.size() - kept) + " more " + where;
            shorter = Optional.of(String.join(separator, parts.subList(0, kept)) + rest)
                    .filter(text -> text.length() <= room);
        }
        return shorter.orElse(parts.size() + " " + where);
    }
}
