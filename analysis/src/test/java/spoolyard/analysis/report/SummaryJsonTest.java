package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.sample.SamplePlant;

final class SummaryJsonTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(ResultsFiles.schema());

    @Test
    void keepsToItsSchema() throws JsonProcessingException {
        assertThat(SCHEMA.validate(summary(SampleReports.of(8, 2, 5)))).isEmpty();
    }

    @Test
    void keepsToItsSchemaWithOneReplicationAndNoFullShift() throws JsonProcessingException {
        JsonNode summary = summary(SampleReports.of(SamplePlant.ofHours(2, 5), 1));

        assertThat(SCHEMA.validate(summary)).isEmpty();
        assertThat(summary.at("/good_spools_per_shift/all/mean").isNull()).isTrue();
        assertThat(summary.at("/plant/good_spools/half_width").isNull()).isTrue();
    }

    @Test
    void hasASchemaThatFindsWhatIsMissingOrMisspelt() throws JsonProcessingException {
        ObjectNode summary = (ObjectNode) summary(SampleReports.of(2, 1, 2));
        summary.remove("version");
        summary.put("verison", "0.1.0");
        ((ObjectNode) summary.at("/plant/oee_pct")).put("half_width", -1);

        assertThat(SCHEMA.validate(summary)).hasSize(3);
    }

    @Test
    void saysWhatMadeIt() throws JsonProcessingException {
        JsonNode summary = summary(SampleReports.of(2, 1, 3));

        assertThat(summary.at("/version").asText()).isEqualTo("0.1.0");
        assertThat(summary.at("/scenario/hash").asText()).isEqualTo("sha256:" + "0".repeat(64));
        assertThat(summary.at("/scenario/settings/0").asText()).isEqualTo("/lines/L1/rate=19 kg/h");
        assertThat(summary.at("/run/start").asText()).isEqualTo("2027-03-01T06:00+01:00");
        assertThat(summary.at("/run/master_seed").asLong()).isEqualTo(1);
        assertThat(summary.at("/run/replications").asInt()).isEqualTo(3);
        assertThat(summary.at("/run/horizon_h").asDouble()).isEqualTo(168);
        assertThat(summary.at("/files/0").asText()).isEqualTo("a.csv");
    }

    @Test
    void givesMeansAndHalfWidthsToSevenDigits() throws JsonProcessingException {
        RunReport report = SampleReports.of(2, 1, 3);
        Interval scrap = report.plant(PlantSheet.SCRAP_PCT);

        JsonNode shown = summary(report).at("/plant/scrap_pct_of_fed");

        assertThat(shown.at("/mean").asText())
                .isEqualTo(Figures.exact(scrap.mean()).orElseThrow().toPlainString());
        assertThat(shown.at("/half_width").asText())
                .isEqualTo(Figures.exact(scrap.halfWidth().orElseThrow())
                        .orElseThrow()
                        .toPlainString());
    }

    private static JsonNode summary(RunReport report) throws JsonProcessingException {
        return MAPPER.readTree(new SummaryJson(report).text(List.of("a.csv")));
    }
}
