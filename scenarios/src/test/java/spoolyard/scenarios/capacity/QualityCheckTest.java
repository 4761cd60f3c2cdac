package spoolyard.scenarios.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.Warning;

/** What of lab and exposure in the reference plant has no effect when it is changed so. */
final class QualityCheckTest {
    private static List<String> warnings(String... sets) throws Exception {
        return ScenarioReader.read(Path.of("orrenvale"), List.of(sets)).warnings().stream()
                .filter(warning -> warning.kind() == Warning.Kind.QUALITY_IN_VAIN)
                .map(Warning::text)
                .toList();
    }

    @Test
    void isContentWithTheReferencePlant() throws Exception {
        assertThat(warnings()).isEmpty();
    }

    @Test
    void findsAQuarantineSmallerThanALot() throws Exception {
        assertThat(warnings("/lab/quarantine=600 spools"))
                .singleElement()
                .asString()
                .contains("the quarantine holds 600 spools, a lot has up to 1000: larger lots are closed early.");
    }

    @Test
    void findsLimitsThatNothingReads() throws Exception {
        assertThat(warnings("/exposure=null"))
                .hasSize(7)
                .anyMatch(text -> text.contains("plant.yaml:36")
                        && text.contains("the exposure_limit of PA has no effect without the part exposure."));
    }

    @Test
    void findsAClockWithoutLimits() throws Exception {
        String[] none = List.of("PLA", "PETG", "ABS", "ASA", "TPU", "PA", "PC").stream()
                .map(code -> "/polymers/" + code + "/exposure_limit=null")
                .toArray(String[]::new);

        assertThat(warnings(none)).singleElement().asString().contains("the clock never runs out");
    }

    @Test
    void findsALabThatOutlastsALimit() throws Exception {
        // the longest test that holds a lot is the print, 90 min; PA may stand 2 h
        assertThat(warnings("/lab/hold=before sealing")).isEmpty();
        assertThat(warnings("/lab/hold=before sealing", "/lab/tests/test print/takes=3 h"))
                .singleElement()
                .asString()
                .contains("for a test of 3.0 h on average; PA may stand 2.0 h");
    }
}
