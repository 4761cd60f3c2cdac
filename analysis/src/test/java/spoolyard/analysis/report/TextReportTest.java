package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.plant.Plant;

final class TextReportTest {
    private static final Ink SIGNS = Ink.of(false, StandardCharsets.UTF_8);

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "8, 20", "11, 2", "12, 2", "60, 2"})
    void fitsOneScreenWhateverTheNumberOfLines(int plantLines, int replications) {
        RunReport report = SampleReports.of(plantLines, 1, replications);

        for (Ink ink : List.of(Ink.PLAIN, SIGNS)) {
            List<String> lines = new TextReport(report, ink).lines();
            assertThat(lines).hasSizeLessThanOrEqualTo(TextReport.MOST_LINES);
            assertThat(lines).allMatch(line -> line.length() <= TextReport.MOST_COLUMNS);
        }
    }

    @Test
    void fitsOneScreenWithManyLinesAndRolesAndLongNames() {
        Plant plant = SamplePlant.of(60, 1);
        List<String> roles =
                IntStream.range(0, 30).mapToObj(i -> i + "R".repeat(60)).toList();
        Plant large = new Plant(
                "W".repeat(300),
                plant.horizonTicks(),
                plant.lines(),
                SamplePlant.crew(roles),
                plant.shifts(),
                plant.changeovers(),
                plant.finishing(),
                plant.book());

        List<String> lines = new TextReport(SampleReports.of(large, 3), SIGNS).lines();

        assertThat(lines).hasSizeLessThanOrEqualTo(TextReport.MOST_LINES);
        assertThat(lines).allMatch(line -> line.length() <= TextReport.MOST_COLUMNS);
    }

    /** The causes beyond the eighth stand together, so that nothing is lost from the sum. */
    @Test
    void addsUpTheSmallestCausesOfScrap() {
        RunReport report = SampleReports.of(2, 1, 2);
        List<List<String>> causes = ScrapList.worthShowing(report.table(LineSheets.SCRAP_CAUSES));
        double others = causes.subList(8, causes.size()).stream()
                .mapToDouble(key -> report.table(LineSheets.SCRAP_CAUSES)
                        .at(key, LineSheets.CAUSE_PCT)
                        .mean())
                .sum();

        List<String> lines = new TextReport(report, SIGNS).lines();

        assertThat(String.join("\n", lines))
                .containsPattern((causes.size() - 8) + " others +"
                        + Figures.shown(others, 2).replace(".", "\\."));
    }

    @Test
    void beginsWithGoodSpoolsPerShiftAndTheirInterval() {
        RunReport report = SampleReports.of(8, 4, 20);
        Interval perShift = report.plant(PlantSheet.SPOOLS_PER_SHIFT);

        List<String> lines = new TextReport(report, SIGNS).lines();

        String expected = String.format(
                Locale.ROOT,
                "Good spools  %.1f \u00b1 %.1f per shift; ",
                perShift.mean(),
                perShift.halfWidth().orElseThrow());
        assertThat(lines.get(0)).isEqualTo("Sample works, 2027-03-01 06:00 to 2027-03-29 07:00");
        assertThat(lines.get(3)).startsWith(expected);
        assertThat(lines.get(4)).matches(" {13}D [0-9.]+ \u00b1 [0-9.]+ {3}E [0-9.]+ \u00b1 .* {3}N .*");
    }

    @Test
    void linesUpTheColumnsOfTheTable() {
        List<String> lines = new TextReport(SampleReports.of(8, 4, 20), SIGNS).lines();

        List<String> rows =
                lines.stream().filter(line -> line.matches("(L[0-9]|all) .*")).toList();
        assertThat(rows).hasSize(9);
        assertThat(rows)
                .extracting(row -> row.indexOf('.'))
                .containsOnly(rows.get(0).indexOf('.'));
        assertThat(rows)
                .extracting(row -> row.lastIndexOf('.'))
                .containsOnly(rows.get(0).lastIndexOf('.'));
        assertThat(rows).extracting(String::length).containsOnly(rows.get(0).length());
    }

    @Test
    void saysThatOneReplicationGivesNoInterval() {
        List<String> lines = new TextReport(SampleReports.of(2, 1, 1), SIGNS).lines();

        assertThat(lines.get(1)).contains("no confidence intervals").contains("--replications");
        assertThat(String.join("\n", lines)).doesNotContain("\u00b1");
    }

    @Test
    void saysThatARunShorterThanAShiftHasNoneToCount() {
        List<String> lines = new TextReport(SampleReports.of(SamplePlant.ofHours(2, 5), 3), SIGNS).lines();

        assertThat(lines.get(3)).contains("No shift lies in the run from begin to end");
    }

    @Test
    void endsWithTwoLinesOfCautionsAndWhereToReadOn() {
        List<String> lines = new TextReport(SampleReports.of(2, 1, 2), SIGNS).lines();

        assertThat(lines.get(lines.size() - 2)).startsWith("Caution: a model is no work method.");
        assertThat(lines.get(lines.size() - 1)).endsWith("docs/cautions.md");
    }

    @Test
    void writesNothingBeyondAsciiWhereTheScreenCannotShowIt() {
        List<String> lines =
                new TextReport(SampleReports.of(8, 1, 3), Ink.of(false, StandardCharsets.US_ASCII)).lines();

        assertThat(String.join("", lines)).matches("\\p{ASCII}*").contains("+/-");
    }

    @Test
    void emphasisesOnlyWhereAskedTo() {
        RunReport report = SampleReports.of(2, 1, 2);

        assertThat(String.join("", new TextReport(report, new Ink(true, true)).lines()))
                .contains("\u001b[1m");
        assertThat(String.join("", new TextReport(report, SIGNS).lines())).doesNotContain("\u001b");
    }
}
