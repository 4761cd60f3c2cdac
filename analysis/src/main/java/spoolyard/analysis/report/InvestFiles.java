package spoolyard.analysis.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.invest.InvestFinding;
import spoolyard.analysis.invest.InvestFinding.MixFinding;
import spoolyard.analysis.invest.InvestFinding.Pick;
import spoolyard.scenarios.choice.Choice;
import spoolyard.scenarios.choice.Mix;

/** The files of the results folder of a study of choices. */
public final class InvestFiles implements ResultsFolder.Filling {
    /** Marks a summary and says which form it has. */
    public static final String FORMAT = "spoolyard-results/invest-1";

    static final String MIXES = "mixes.csv";
    static final String PAY_BACK = "pay-back.csv";

    private final InvestReport report;
    private final InvestFinding finding;
    private final Map<String, byte[]> pictures;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param pictures pictures by file name; may be empty
     */
    public InvestFiles(InvestReport report, Map<String, byte[]> pictures) {
        this.report = report;
        this.finding = report.finding();
        this.pictures = pictures;
    }

    @Override
    public void into(Path folder) throws IOException {
        CsvTable.write(folder.resolve(MIXES), mixes());
        CsvTable.write(folder.resolve(PAY_BACK), payBack());
        for (Map.Entry<String, byte[]> picture : pictures.entrySet()) {
            Files.write(folder.resolve(picture.getKey()), picture.getValue());
        }
        Files.writeString(folder.resolve(ResultsFiles.SUMMARY), JsonText.written(summary()));
    }

    private List<List<String>> payBack() {
        PayBackTable table = new PayBackTable(report, Ink.PLAIN);
        List<List<String>> rows = new ArrayList<>(List.of(PayBackTable.header()));
        report.alone().forEach(option -> rows.add(table.cells(option)));
        return rows;
    }

    private List<List<String>> mixes() {
        List<String> header = new ArrayList<>(List.of("mix"));
        report.choices().all().forEach(choice -> header.add(choice.name()));
        header.addAll(List.of("paid_once", "bought_per_year", "running_per_year", "pay_per_year", "price_per_year"));
        finding.target()
                .ifPresent(target -> header.addAll(
                        List.of(target.measure().column(), target.measure().column() + "_half_width", "verdict")));
        for (String money : List.of("gain_per_year", "net_per_year", "whole_plant_net_per_year")) {
            header.addAll(List.of(money, money + "_half_width"));
        }
        header.addAll(List.of("busiest_crew_pct", "replications"));
        List<List<String>> rows = new ArrayList<>(List.of(header));
        finding.mixes().forEach(mix -> rows.add(row(mix)));
        return rows;
    }

    private List<String> row(MixFinding mix) {
        List<String> row = new ArrayList<>(List.of(Integer.toString(mix.number())));
        Mix taken = report.mixes().get(mix.number());
        report.choices().all().forEach(choice -> row.add(option(taken, choice)));
        row.addAll(List.of(
                Figures.cell(mix.price().once()),
                Figures.cell(mix.price().boughtPerYear()),
                Figures.cell(mix.price().runningPerYear()),
                Figures.cell(mix.price().payPerYear()),
                Figures.cell(mix.price().perYear())));
        if (finding.target().isPresent()) {
            row.addAll(cells(mix.held()));
            row.add(mix.verdict().name().toLowerCase(Locale.ROOT));
        }
        row.addAll(mix.worth()
                .map(worth -> Stream.of(worth.gain(), worth.net(), worth.plantNet())
                        .flatMap(interval -> cells(interval).stream())
                        .toList())
                .orElse(List.of("", "", "", "", "", "")));
        row.addAll(List.of(Figures.cell(100 * mix.busiestShare()), Integer.toString(mix.replications())));
        return row;
    }

    private static List<String> cells(Interval interval) {
        return List.of(
                Figures.cell(interval.mean()), Figures.cell(interval.halfWidth().orElse(Double.NaN)));
    }

    private static String option(Mix mix, Choice choice) {
        return mix.taken().stream()
                .filter(taken -> taken.choice().equals(choice))
                .map(taken -> taken.option().name())
                .findFirst()
                .orElse(choice.now());
    }

    private ObjectNode summary() {
        ObjectNode root = JsonText.opening(FORMAT, report.provenance());
        InvestAnswer answer = new InvestAnswer(report, "+/-");
        root.put("choices", report.file());
        root.put("mixes", finding.mixes().size());
        root.put("runs", finding.runs());
        root.put("overflows", report.isRare() ? "expected" : "counted");
        root.put("counted", report.rule().name().toLowerCase(Locale.ROOT));
        root.set("level", JsonText.number(finding.plan().level()));
        report.target().ifPresent(target -> {
            root.put("target", target);
            root.put("answer", answer.cheapest());
            finding.cheapest().ifPresent(pick -> pick(root.putObject("cheapest_that_meets"), pick));
            root.set(
                    "cheaper_and_open", JsonText.number(finding.cheaperAndOpen().size()));
        });
        answer.best().ifPresent(sentence -> root.put("worth_most_answer", sentence));
        finding.best().ifPresent(pick -> pick(root.putObject("worth_most"), pick));
        report.warnings().forEach(root.putArray("warnings")::add);
        Stream.concat(Stream.of(MIXES, PAY_BACK), pictures.keySet().stream()).forEach(root.withArray("/files")::add);
        return root;
    }

    private void pick(ObjectNode node, Pick pick) {
        MixFinding mix = finding.mixes().get(pick.mix());
        node.put("mix", pick.mix());
        node.put("name", report.label(pick.mix()));
        report.mixes().get(pick.mix()).settings().forEach(node.putArray("settings")::add);
        node.put("selection_decided", pick.isDecided());
        node.set("at_most_below_best_per_year", JsonText.number(pick.atMostBelow()));
        node.set("within_per_year", JsonText.number(pick.within()));
        node.set("price_per_year", JsonText.number(mix.price().perYear()));
        mix.worth().ifPresent(worth -> {
            node.set("gain_per_year", JsonText.interval(worth.gain()));
            node.set("net_per_year", JsonText.interval(worth.net()));
            node.set("whole_plant_net_per_year", JsonText.interval(worth.plantNet()));
        });
    }
}
