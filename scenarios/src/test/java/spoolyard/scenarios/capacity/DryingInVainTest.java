package spoolyard.scenarios.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.Warning;

/** What of drying in the reference plant has no effect when it is changed so. */
final class DryingInVainTest {
    private static List<String> warnings(String... sets) throws Exception {
        return ScenarioReader.read(Path.of("orrenvale"), List.of(sets)).warnings().stream()
                .filter(warning -> warning.kind() == Warning.Kind.DRYING_IN_VAIN)
                .map(Warning::text)
                .toList();
    }

    @Test
    void isContentWithTheReferencePlant() throws Exception {
        assertThat(warnings()).isEmpty();
    }

    /** L8 makes PLA, PETG and ABS. */
    @Test
    void findsAHopperWithNothingToDry() throws Exception {
        assertThat(warnings("/polymers/PLA/drying=null", "/polymers/PETG/drying=null", "/polymers/ABS/drying=null"))
                .isNotEmpty()
                .anyMatch(text ->
                        text.contains(": line L8 has nothing to dry: no polymer ordered of it has a drying time"))
                .noneMatch(text -> text.contains("line L7 "));
    }

    @Test
    void findsDryersAndTimesWithoutAHopper() throws Exception {
        String[] none = Stream.concat(
                        Stream.of("/every_line/material=null"),
                        IntStream.rangeClosed(1, 8).mapToObj(i -> "/lines/L" + i + "/material=null"))
                .toArray(String[]::new);

        assertThat(warnings(none))
                .anyMatch(text -> text.contains(": the part drying has no effect: no line has a material."))
                .anyMatch(text ->
                        text.contains(": the drying of PETG has no effect: no line that makes it has a material."))
                .noneMatch(text -> text.contains("nothing to dry"));
    }
}
