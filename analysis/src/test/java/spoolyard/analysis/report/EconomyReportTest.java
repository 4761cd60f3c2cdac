package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.plant.Economy;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;

final class EconomyReportTest {
    private static final Ink SIGNS = Ink.of(false, StandardCharsets.UTF_8);
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(ResultsFiles.schema());

    private static EnergyUse energy(Plant plant) {
        return new EnergyUse(
                55,
                20,
                0.55,
                0,
                plant.lines().stream()
                        .map(line -> new EnergyUse.LineEnergy(18, 4))
                        .toList());
    }

    private static Prices prices(String currency) {
        Map<String, Double> labour = new LinkedHashMap<>();
        List.of("operator", "setter", "packer").forEach(role -> labour.put(role, 28.0));
        return new Prices(
                currency,
                Map.of("PLA", 2.3),
                new Prices.Concentrate(10, Map.of()),
                7.5,
                new Prices.Credit(0.25, 0, 1),
                1,
                labour,
                0.16,
                Optional.of(Map.of("PLA", 6.0)));
    }

    private static RunReport report(int lines, int replications, String currency, List<String> flags) {
        Plant plant = SamplePlant.of(lines, 1);
        Plant valued = plant.with(new Economy(Optional.of(energy(plant)), Optional.of(prices(currency))));
        return SampleReports.of(new Setting(valued, SampleReports.clock(), flags), replications);
    }

    private static JsonNode summary(RunReport report) throws JsonProcessingException {
        return new ObjectMapper().readTree(new SummaryJson(report).text(List.of("a.csv")));
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "8, 20", "12, 2", "60, 2"})
    void fitsOneScreenWithCostsAndPointersToLaw(int plantLines, int replications) {
        RunReport report = report(plantLines, replications, "a very long currency", List.of("rest", "nights"));

        List<String> lines = new TextReport(report, SIGNS).lines();

        assertThat(lines)
                .hasSizeLessThanOrEqualTo(TextReport.MOST_LINES)
                .allMatch(line -> line.length() <= TextReport.MOST_COLUMNS)
                .anyMatch(line -> line.startsWith("all "))
                .anyMatch(line -> line.startsWith("Labour law   2 pointers"));
    }

    @Test
    void beginsTheCostWithThatOfAGoodSpoolAndItsLargestPart() {
        List<String> lines = new TextReport(report(2, 5, "EUR", List.of()), SIGNS).lines();

        int cost = lines.indexOf(lines.stream()
                .filter(line -> line.startsWith("Cost "))
                .findFirst()
                .orElseThrow());
        assertThat(lines.get(cost)).matches("Cost {9}EUR [0-9.]+ ± [0-9.]+ a good spool: labour [0-9.]+, .*");
        assertThat(lines.get(cost + 1)).contains(" in all; EUR ", " contribution lost; ", " kWh/kg fed");
        assertThat(lines).noneMatch(line -> line.startsWith("Labour law"));
    }

    @Test
    void showsEnergyAloneWhereNobodyAsksForMoney() {
        Plant plant = SamplePlant.of(2, 1);
        Plant drawing = plant.with(new Economy(Optional.of(energy(plant)), Optional.empty()));

        List<String> lines = new TextReport(SampleReports.of(drawing, 3), SIGNS).lines();

        assertThat(lines).anyMatch(line -> line.matches("Energy {7}[0-9 ]+ kWh, [0-9.]+ kWh/kg fed"));
        assertThat(lines).noneMatch(line -> line.startsWith("Cost "));
    }

    @Test
    void writesASummaryInItsFormWhosePartsSumToTheTotal() throws JsonProcessingException {
        JsonNode summary = summary(report(3, 4, "EUR", List.of("rest under 11 h")));

        assertThat(SCHEMA.validate(summary)).isEmpty();
        assertThat(summary.at("/labour_law/0").asText()).isEqualTo("rest under 11 h");
        assertThat(sum(summary.at("/costs/by_part"))).isCloseTo(mean(summary.at("/costs/total")), within(0.1));
        assertThat(sum(summary.at("/costs/per_good_spool_by_part")))
                .isCloseTo(mean(summary.at("/costs/per_good_spool")), within(1e-5));
        assertThat(sum(summary.at("/energy/kwh_by_use"))).isCloseTo(mean(summary.at("/energy/kwh")), within(0.01));
        assertThat(sum(summary.at("/costs/labour_by_role")))
                .isCloseTo(mean(summary.at("/costs/by_part/labour")), within(0.01));
    }

    private static double mean(JsonNode interval) {
        return interval.at("/mean").asDouble();
    }

    private static double sum(JsonNode intervals) {
        return StreamSupport.stream(intervals.spliterator(), false)
                .mapToDouble(EconomyReportTest::mean)
                .sum();
    }

    @Test
    void writesNothingOfWhatNobodyAskedFor() throws JsonProcessingException {
        RunReport silent = SampleReports.of(2, 1, 2);
        RunReport asked = report(2, 2, "EUR", List.of());

        JsonNode summary = summary(silent);

        assertThat(summary.has("costs")).isFalse();
        assertThat(summary.has("energy")).isFalse();
        assertThat(summary.has("labour_law")).isFalse();
        assertThat(new ResultsFiles(silent, Map.of()).names())
                .doesNotContain("costs.csv", "lost_contribution.csv", "energy.csv");
        assertThat(new ResultsFiles(asked, Map.of()).names())
                .contains("costs.csv", "lost_contribution.csv", "energy.csv")
                .containsAll(new ResultsFiles(silent, Map.of()).names());
    }

    @Test
    void endsTheTableOfCostsWithTheTotal() {
        Estimates costs = report(2, 2, "EUR", List.of()).table(CostSheets.COSTS);

        double parts = costs.keys().stream()
                .filter(key -> !key.get(0).equals(CostRow.TOTAL))
                .mapToDouble(key -> costs.at(key, CostSheets.COST).mean())
                .sum();
        List<String> last = costs.keys().get(costs.keys().size() - 1);
        assertThat(last).containsExactly("total", "", "EUR");
        assertThat(costs.at(last, CostSheets.COST).mean()).isCloseTo(parts, within(1e-9 * parts));
    }
}
