package spoolyard.scenarios.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.Warning;

/** In the two-line plant black is ordered in PLA and PETG, red (shade class 3) and blue in PLA only. */
final class RegrindCheckTest {
    private static List<String> warnings(String polymers, String into, String share) throws Exception {
        String regrind = "{polymers: [" + polymers + "], into: [" + into + "], share: " + share + "}";
        List<Warning> warnings = ScenarioReader.read(
                        Path.of("two-lines"), List.of("/materials={regrind: " + regrind + "}"))
                .warnings();
        assertThat(warnings).allMatch(warning -> warning.kind() == Warning.Kind.REGRIND_UNUSUAL);
        return warnings.stream().map(Warning::message).toList();
    }

    @Test
    void saysNothingOfUsualRegrind() throws Exception {
        assertThat(warnings("PLA", "BLK", "25 %")).isEmpty();
    }

    @Test
    void warnsOfALargeShare() throws Exception {
        assertThat(warnings("PLA", "BLK", "26 %"))
                .containsExactly("26 % of regrind is more than the 20 to 25 % that moulders allow themselves.");
    }

    @Test
    void warnsOfALightColour() throws Exception {
        assertThat(warnings("PLA", "BLK, RED", "10 %"))
                .containsExactly("RED is no dark colour: shades of what is ground may show in it.");
    }

    @Test
    void warnsOfAPolymerThatNoOrderTakesRegrindOf() throws Exception {
        assertThat(warnings("PETG", "BLU", "10 %"))
                .containsExactly("no order for PETG takes regrind; it fills the store.");
    }

    @Test
    void warnsOfAPolymerThatIsUsuallyNotGround() throws Exception {
        List<Warning> warnings = ScenarioReader.read(
                        Path.of("orrenvale"),
                        List.of("/materials={regrind: {polymers: [PLA, TPU], into: [BLK], share: 10 %}}"))
                .warnings();

        assertThat(warnings)
                .filteredOn(warning -> warning.kind() == Warning.Kind.REGRIND_UNUSUAL)
                .extracting(Warning::message)
                .containsExactly("TPU is usually not ground: it takes up water, or its chains break.");
    }
}
