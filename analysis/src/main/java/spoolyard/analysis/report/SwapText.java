package spoolyard.analysis.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import spoolyard.analysis.buffer.Stint;
import spoolyard.analysis.buffer.SwapStory;
import spoolyard.analysis.buffer.SwapWaits;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.Swap;

/** Tells on a screen what became of the swaps of a line, and one overflow moment by moment. */
public final class SwapText {
    private static final int HEAD = 13;
    private static final int MOMENT = 11;
    private static final int NAME = 18;
    private static final int MOST_STINTS = 6;
    private static final List<Double> SHARES = List.of(0.5, 0.9, 0.99, 0.999);
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("EEE yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    private final SwapReport report;
    private final Ink ink;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param ink what the screen can show
     */
    public SwapText(SwapReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
    }

    /**
     * All of it.
     *
     * @return lines of text
     */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(ink.title(report.setting().plant().name()) + ": the spool swaps of "
                + report.line().name() + " in " + report.replications() + " replications");
        lines.add("");
        double overflows = sum(report.counts());
        lines.addAll(wrapped(
                Cell.left("Overflow", HEAD),
                ink.strong(Figures.shown(100 * overflows / report.swaps().size(), 2) + " %") + " of "
                        + Figures.shown(report.swaps().size(), 0) + " swaps" + shares(report.counts())));
        lines.addAll(wrapped(
                Cell.left("Lost", HEAD),
                ink.strong(Figures.shown(sum(report.lostM()), 0) + " m") + shares(report.lostM())));
        lines.addAll(waits());
        report.story().ifPresent(story -> lines.addAll(story(story)));
        return lines;
    }

    private static double sum(Map<OverflowCause, Double> parts) {
        return parts.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static String shares(Map<OverflowCause, Double> parts) {
        double all = sum(parts);
        if (all == 0) {
            return "";
        }
        return parts.entrySet().stream()
                .filter(part -> part.getValue() > 0)
                .map(part -> part.getKey().label() + " " + Figures.shown(100 * part.getValue() / all, 1) + " %")
                .collect(Collectors.joining(", ", "; of these ", ""));
    }

    private List<String> waits() {
        SwapWaits waits = report.waits();
        if (waits.count() == 0) {
            return List.of(headed("Wait", ink.none()));
        }
        String within = SHARES.stream()
                .map(share ->
                        Figures.cell(100 * share) + " % within " + Figures.shown(waits.quantileS(share), 1) + " s")
                .collect(Collectors.joining(", "));
        return List.of(
                headed(
                        "Wait",
                        "from the full spool until the work on it begins: mean " + Figures.shown(waits.meanS(), 1)
                                + " s;"),
                headed("", within + ", longest " + Figures.shown(waits.quantileS(1), 1) + " s"));
    }

    private List<String> story(SwapStory story) {
        List<String> lines = new ArrayList<>();
        Swap swap = story.swap();
        lines.add("");
        lines.add(ink.strong(rank() + ", in replication " + story.seen().replication()));
        lines.add("");
        lines.add(report.setting().clock().at(swap.fullTick()).format(SECOND) + "   "
                + swap.product().label());
        moment(
                lines,
                story,
                swap.fullTick(),
                "spool full on strand " + swap.strand() + "; accumulator "
                        + Figures.shown(swap.fullLevelM(), 1) + " m above home, room for "
                        + Figures.shown(report.line().accumulator().roomM(), 1) + " m");
        LevelTrace trace = LevelTrace.of(swap, report.line());
        boolean isFullFirst = trace.fullTick() <= swap.begunTick();
        String full =
                "accumulator full; counts as " + swap.overflow().orElseThrow().label();
        if (isFullFirst) {
            moment(lines, story, trace.fullTick(), full);
        }
        if (swap.begunTick() != Ticks.NEVER) {
            moment(
                    lines,
                    story,
                    swap.begunTick(),
                    story.server().map(Stint::who).orElse("the winder") + " begins; accumulator at "
                            + Figures.shown(swap.begunLevelM(), 1) + " m");
        }
        if (!isFullFirst) {
            moment(lines, story, trace.fullTick(), full);
        }
        if (swap.turnedTick() != Ticks.NEVER) {
            moment(
                    lines,
                    story,
                    swap.turnedTick(),
                    "winder turns again; lost " + Figures.shown(swap.totalLostM(), 1) + " m" + shares(swap.lostM()));
        }
        lines.add("");
        lines.addAll(people(story));
        return lines;
    }

    private String rank() {
        return report.rank() == 1 ? "The overflow that lost most" : "Overflow " + report.rank() + " by metres lost";
    }

    private static void moment(List<String> lines, SwapStory story, long tick, String text) {
        lines.add(Cell.right(since(story, tick), MOMENT) + "  " + text);
    }

    private static String since(SwapStory story, long tick) {
        double seconds = Ticks.toSeconds(tick - story.swap().fullTick());
        return (seconds < 0 ? "" : "+") + Figures.shown(seconds, 1) + " s";
    }

    private List<String> people(SwapStory story) {
        long from = story.swap().fullTick();
        long to = Math.max(
                from + 1,
                story.swap().begunTick() == Ticks.NEVER
                        ? story.endTick()
                        : story.swap().begunTick());
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong("Meanwhile, until the work began"));
        List<String> present = story.present(from, to);
        if (present.isEmpty()) {
            lines.add("  nobody was at the plant");
        }
        for (String who : present) {
            lines.addAll(wrapped("  " + Cell.left(who, NAME), did(story, who, from, to)));
        }
        return lines;
    }

    /** What a person did, of many things the last. */
    private static String did(SwapStory story, String who, long from, long to) {
        List<Stint> all = story.of(who, from, to);
        int before = all.size() <= MOST_STINTS ? 0 : all.size() - MOST_STINTS + 1;
        return all.stream()
                .skip(before)
                .map(stint -> stint.text() + " (" + until(story, stint, to) + ")")
                .collect(Collectors.joining(", ", before == 0 ? "" : before + " other things, then ", ""));
    }

    private static List<String> wrapped(String head, String text) {
        List<String> lines = new ArrayList<>();
        for (String line : Wrapped.lines(text, "", TextReport.MOST_COLUMNS - head.length())) {
            lines.add((lines.isEmpty() ? head : " ".repeat(head.length())) + line);
        }
        return lines;
    }

    private static String until(SwapStory story, Stint stint, long to) {
        return stint.endTick() > to ? "on" : "until " + since(story, stint.endTick());
    }

    private static String headed(String head, String text) {
        return Cell.left(head, HEAD) + text;
    }
}
