package spoolyard.scenarios.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.Warning;

/** Dryer limits of the reference plant, worked out by hand: hopper kg over drying hours against kg/h of the line. */
final class DryerCheckTest {
    private static List<String> warnings(String... sets) throws Exception {
        return ScenarioReader.read(Path.of("orrenvale"), List.of(sets)).warnings().stream()
                .filter(warning -> warning.kind() == Warning.Kind.DRYER_TOO_SMALL)
                .map(Warning::text)
                .toList();
    }

    @Test
    void findsTheLinesThatCannotDryAsFastAsTheyRun() throws Exception {
        // PETG dries 6 h: L4 105/6 = 17.5 < 24 x 0.95 = 22.8; L6 196/6 = 32.7 < 41.8; L7 161/6 = 26.8 < 34.2;
        // L8 17.5 < 19.0, all less 1 to 4 % of concentrate that the dryer does not give.
        // PA dries 10 h: L1 (105 - 25)/10 = 8.0 < 14 x 0.7 = 9.8. L2 and L3: 17.5 > 17.1.
        assertThat(warnings())
                .anyMatch(text ->
                        text.contains("line L4 dries at most 17.5 kg/h of PETG: 105 kg in the hopper for 6.0 h"))
                .anyMatch(text -> text.contains("line L6 dries at most 32.7 kg/h of PETG"))
                .anyMatch(text -> text.contains("line L7 dries at most 26.8 kg/h of PETG"))
                .anyMatch(text -> text.contains("line L1 dries at most 8.0 kg/h of PA"))
                .noneMatch(text -> text.contains("line L2") || text.contains("line L5"));
    }

    /** PLA dries 4 h: 105 kg on wheels give 26.3 kg/h, and L6 draws 44. L1, which blends, is left with 80 kg, 20 kg/h. */
    @Test
    void looksAtTheDryersOnWheelsToo() throws Exception {
        assertThat(warnings())
                .anyMatch(text ->
                        text.contains("line L6 dries at most 26.3 kg/h of PLA: 105 kg in a dryer on wheels for 4.0 h"))
                .noneMatch(text -> text.contains("line L1 dries at most 20.0"));
        assertThat(warnings("/drying/mobile_dryers=0")).noneMatch(text -> text.contains("on wheels"));
    }

    @Test
    void isContentWithALargerHopper() throws Exception {
        assertThat(warnings("/lines/L4/material/hopper=140 kg"))
                .noneMatch(text -> text.contains("line L4") && text.contains("in the hopper"));
    }
}
