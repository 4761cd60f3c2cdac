package spoolyard.core.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Colour arithmetic against published values; the source of each table stands beside its check. */
class ColourTest {
    /**
     * The 34 pairs of G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30 (2005) 21-30, table 1, to the four
     * decimals printed (read in the test data of a public image library).
     */
    @ParameterizedTest(name = "pair {0}")
    @CsvFileSource(resources = "ciede2000.csv", numLinesToSkip = 1)
    void tellsThePublishedColourDifferences(
            int pair, double l1, double a1, double b1, double l2, double a2, double b2, double deltaE) {
        CieLab one = new CieLab(l1, a1, b1);
        CieLab other = new CieLab(l2, a2, b2);

        assertThat(ColourDifference.ciede2000(one, other)).isEqualTo(deltaE, within(6e-5));
        assertThat(ColourDifference.ciede2000(other, one)).isEqualTo(deltaE, within(6e-5));
    }

    @Test
    void tellsNoDifferenceOfAColourToItself() {
        CieLab red = new CieLab(43, 58, 38);

        assertThat(ColourDifference.ciede2000(red, red)).isZero();
    }

    /** IEC 61966-2-1 and CIE 15, recomputed with the matrix of a public colour site (memory). */
    @ParameterizedTest
    @CsvFileSource(resources = "srgb_xyz_lab.csv", numLinesToSkip = 1)
    void convertsFromScreenToTristimulusToLab(
            int red, int green, int blue, double x, double y, double z, double l, double a, double b) {
        Tristimulus xyz = new Srgb(red, green, blue).xyz();
        CieLab lab = CieLab.of(xyz, Srgb.WHITE);

        assertThat(new double[] {xyz.x(), xyz.y(), xyz.z()}).containsExactly(new double[] {x, y, z}, within(1e-9));
        assertThat(new double[] {lab.lightness(), lab.a(), lab.b()})
                .containsExactly(new double[] {l, a, b}, within(1e-6));
        Tristimulus back = lab.xyz(Srgb.WHITE);
        assertThat(new double[] {back.x(), back.y(), back.z()}).containsExactly(new double[] {x, y, z}, within(1e-9));
    }

    /** Whites of ASTM E308 for 10 nm (memory); ours end at 730 nm and have four decimals, hence the tolerance. */
    @ParameterizedTest
    @CsvSource({
        "D65_2,  0.95047, 1.08883",
        "D65_10, 0.94811, 1.07304",
        "D50_2,  0.96422, 0.82521",
        "D50_10, 0.96720, 0.81427"
    })
    void hasTheWhitesOfTheStandard(Viewing viewing, double x, double z) {
        assertThat(viewing.white().x()).isEqualTo(x, within(0.0006));
        assertThat(viewing.white().y()).isEqualTo(1);
        assertThat(viewing.white().z()).isEqualTo(z, within(0.0012));
    }

    /** A grey is a grey under every light, and white and black stay what they are. */
    @ParameterizedTest
    @CsvSource({"100, 255", "0, 0", "53.585, 128"})
    void showsGreysOnTheScreen(double lightness, int channel) {
        for (Viewing viewing : Viewing.values()) {
            assertThat(Srgb.of(new CieLab(lightness, 0, 0), viewing)).isEqualTo(new Srgb(channel, channel, channel));
        }
    }

    /** Kubelka and Munk 1931, recomputed. */
    @ParameterizedTest
    @CsvFileSource(resources = "kubelka_munk.csv", numLinesToSkip = 1)
    void convertsReflectanceToKOverS(double reflectance, double kOverS, double back) {
        assertThat(KubelkaMunk.kOverS(reflectance)).isEqualTo(kOverS, within(1e-13));
        assertThat(KubelkaMunk.reflectance(kOverS)).isEqualTo(back, within(1e-13));
    }

    /** Duncan 1940: K/S of a mixture of two that scatter alike is linear in the share; recomputed. */
    @ParameterizedTest
    @CsvFileSource(resources = "kubelka_munk_mix.csv", numLinesToSkip = 1)
    void mixesTwoColours(double newOne, double oldOne, double shareOld, double kOverS, double reflectance) {
        double mixed =
                KubelkaMunk.mixed(KubelkaMunk.kOverS(newOne), KubelkaMunk.kOverS(oldOne), shareOld / (1 - shareOld));

        assertThat(mixed).isEqualTo(kOverS, within(1e-12));
        assertThat(KubelkaMunk.reflectance(mixed)).isEqualTo(reflectance, within(1e-12));
    }

    /** Saunderson 1942, recomputed. */
    @ParameterizedTest
    @CsvFileSource(resources = "saunderson.csv", numLinesToSkip = 1)
    void correctsForTheSurface(double internal, double outside, double inside, double measured) {
        Saunderson surface = new Saunderson(outside, inside);

        assertThat(surface.measured(internal)).isEqualTo(measured, within(1e-13));
        assertThat(surface.internal(measured)).isEqualTo(internal, within(1e-13));
    }
}
