package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command on two lines that fill at the same instant, worked by hand; nothing is random. */
final class SwapsCommandTest {
    @TempDir
    private Path folder;

    /**
     * Hand, as in HandOracleTheoryTest: both lines are full at 200 s; the operator is at L2 for 18 + 21 s, then at L3. Its 60
     * m are full after 35.79 s at 1.676418 m/s; 3.2094 s x v = 5.38 m are lost for want of crew and 18 s x v = 30.18 m because
     * the swap takes so long: 15.1 % and 84.9 % of 35.56 m. The run ends before the next spool is full.
     */
    @Test
    void tellsAnOverflowMomentByMoment() throws IOException {
        Called called = called("--set=/every_line/winder/finish=21 s");

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isZero();
        assertThat(called.out())
                .contains("100.00 % of 1 swaps; of these no crew 100.0 %")
                .contains("36 m; of these no crew 15.1 %, swap too slow 84.9 %")
                .contains("longest 39.0 s")
                .contains("+0.0 s  spool full on strand 1; accumulator 0.0 m above home, room for 60.0 m")
                .contains("+35.8 s  accumulator full; counts as no crew")
                .contains("+39.0 s  operator 1 begins; accumulator at 60.0 m")
                .contains("+57.0 s  winder turns again; lost 35.6 m; of these no crew 15.1 %, swap too slow 84.9 %")
                .containsPattern("operator 1 +works: spool swap L2 \\(until \\+39\\.0 s\\)");
        assertThat(Files.readString(folder.resolve("out/overflows.csv"))).contains(",39,57,no crew,35.55");
        assertThat(ImageIO.read(folder.resolve("out/overflow.png").toFile()).getWidth())
                .isEqualTo(1280);
        assertThat(Files.readString(folder.resolve("out/summary.json"))).contains("\"swaps\" : 1,");
    }

    /** Hand: a wait of 17 + 1 s and a swap of 17 s are 35 s, less than the 35.79 s that the room lasts. */
    @Test
    void saysThereIsNoneWhereNoneIs() {
        Called called = called("--set=/every_line/winder/stop=17 s", "--no-charts");

        assertThat(called.code()).isZero();
        assertThat(called.out()).contains("0.00 % of 1 swaps").doesNotContain("lost most");
    }

    @Test
    void refusesARankThatNoOverflowHas() {
        Called called = called("--set=/every_line/winder/finish=21 s", "--rank=2");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains("--rank = 2. Must be at most 1, the overflows seen.");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void refusesALineThatIsNone() {
        Called called = Called.with("swaps", corner(), "--line=L9");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains("--line = L9. Must be a line of this plant: L2, L3.");
    }

    private Called called(String... options) {
        List<String> arguments = new ArrayList<>(List.of("swaps", corner(), "--line=L3", "--replications=1"));
        arguments.add("--out=" + folder.resolve("out"));
        arguments.addAll(List.of(options));
        return Called.with(arguments.toArray(String[]::new));
    }

    private static String corner() {
        try {
            return Path.of(SwapsCommandTest.class
                            .getResource("/corners/two-lines")
                            .toURI())
                    .toString();
        } catch (URISyntaxException failure) {
            throw new IllegalArgumentException(failure);
        }
    }
}
