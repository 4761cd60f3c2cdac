package spoolyard.analysis.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import spoolyard.analysis.buffer.SwapStudy.SeenSwap;
import spoolyard.analysis.buffer.SwapWaits;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.Swap;

/** The files of the results folder of a study of swaps. */
public final class SwapFiles implements ResultsFolder.Filling {
    /** Marks a summary and says which form it has. */
    public static final String FORMAT = "spoolyard-results/swaps-1";

    static final String OVERFLOWS = "overflows.csv";

    private final SwapReport report;
    private final Map<String, byte[]> pictures;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param pictures pictures by file name; may be empty
     */
    public SwapFiles(SwapReport report, Map<String, byte[]> pictures) {
        this.report = report;
        this.pictures = pictures;
    }

    @Override
    public void into(Path folder) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(folder.resolve(OVERFLOWS))) {
            CsvTable.FORMAT.printRecord(out, header().toArray());
            for (SeenSwap seen : report.overflows()) {
                CsvTable.FORMAT.printRecord(out, row(seen).toArray());
            }
        }
        for (Map.Entry<String, byte[]> picture : pictures.entrySet()) {
            Files.write(folder.resolve(picture.getKey()), picture.getValue());
        }
        Files.writeString(folder.resolve(ResultsFiles.SUMMARY), JsonText.written(summary()));
    }

    private static List<String> header() {
        List<String> header = new ArrayList<>(List.of(
                "replication", "full_local", "strand", "product", "level_when_full_m", "wait_s", "stood_s", "cause"));
        header.add("lost_m");
        for (OverflowCause cause : OverflowCause.values()) {
            header.add("lost_" + cause.name().toLowerCase(Locale.ROOT) + "_m");
        }
        return header;
    }

    private List<String> row(SeenSwap seen) {
        Swap swap = seen.swap();
        List<String> row = new ArrayList<>();
        row.add(Integer.toString(seen.replication()));
        row.add(report.setting().clock().millisecond(swap.fullTick()));
        row.add(Integer.toString(swap.strand()));
        row.add(swap.product().label());
        row.add(Figures.cell(swap.fullLevelM()));
        row.add(Figures.cell(secondsTo(swap, swap.begunTick())));
        row.add(Figures.cell(secondsTo(swap, swap.turnedTick())));
        row.add(swap.overflow().orElseThrow().label());
        row.add(Figures.cell(swap.totalLostM()));
        for (OverflowCause cause : OverflowCause.values()) {
            row.add(Figures.cell(swap.lostM().get(cause)));
        }
        return row;
    }

    private static double secondsTo(Swap swap, long tick) {
        return tick == Ticks.NEVER ? Double.NaN : Ticks.toSeconds(tick - swap.fullTick());
    }

    private ObjectNode summary() {
        ObjectNode root = JsonText.opening(FORMAT, report.provenance());
        root.put("line", report.line().name());
        root.put("replications", report.replications());
        root.put("swaps", report.swaps().size());
        byCause(root.putObject("overflows"), report.counts());
        byCause(root.putObject("lost_m"), report.lostM());
        SwapWaits waits = report.waits();
        ObjectNode wait = root.putObject("wait_s");
        wait.set("mean", JsonText.number(waits.meanS()));
        for (double share : List.of(0.5, 0.9, 0.99, 0.999, 1.0)) {
            wait.set("p" + Figures.cell(100 * share), JsonText.number(waits.quantileS(share)));
        }
        root.putArray("files").add(OVERFLOWS);
        pictures.keySet().forEach(root.withArray("/files")::add);
        return root;
    }

    private static void byCause(ObjectNode node, Map<OverflowCause, Double> parts) {
        parts.forEach((cause, value) -> node.set(cause.name().toLowerCase(Locale.ROOT), JsonText.number(value)));
    }
}
