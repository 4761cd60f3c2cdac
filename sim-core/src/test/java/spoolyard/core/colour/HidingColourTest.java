package spoolyard.core.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HidingColourTest {
    private static HidingColour colour(double lightness, double a, double b) {
        return HidingColour.of(new CieLab(lightness, a, b), Viewing.D65_10, Saunderson.NONE)
                .orElseThrow();
    }

    /** A grey has the same reflectance in every band: K/S of L* = 50 is that of Y = (66/116)^3. */
    @Test
    void findsFlatReflectanceForAGrey() {
        double y = Math.pow(66.0 / 116, 3);

        assertThat(colour(50, 0, 0).meanKOverS()).isEqualTo((1 - y) * (1 - y) / (2 * y), within(1e-9));
    }

    /** Half and half of two greys: K/S is the mean. */
    @Test
    void mixesGreysByKubelkaAndMunk() {
        double white = KubelkaMunk.kOverS(Math.pow((90.0 + 16) / 116, 3));
        double black = KubelkaMunk.kOverS(Math.pow((20.0 + 16) / 116, 3));
        double y = KubelkaMunk.reflectance((white + black) / 2);

        CieLab mixed = colour(90, 0, 0).mixedWith(colour(20, 0, 0), 1);

        assertThat(mixed.lightness()).isEqualTo(116 * Math.cbrt(y) - 16, within(1e-8));
        assertThat(mixed.a()).isEqualTo(0, within(1e-8));
    }

    /** Yellow with a little blue is green: the hue turns to negative a*, as on any palette. */
    @Test
    void makesGreenOfYellowAndBlue() {
        CieLab mixed = colour(84, 4, 80).mixedWith(colour(34, 10, -48), 0.1);

        assertThat(mixed.a()).isLessThan(-15);
        assertThat(mixed.b()).isPositive();
    }

    @Test
    void knowsColoursThatNoSurfaceCanHave() {
        assertThat(HidingColour.of(new CieLab(90, 100, 0), Viewing.D65_10, Saunderson.NONE))
                .isEmpty();
        assertThat(HidingColour.of(new CieLab(100, 0, 0), Viewing.D65_10, Saunderson.NONE))
                .isEmpty();
        assertThat(HidingColour.of(new CieLab(10, 0, -120), Viewing.D65_10, Saunderson.NONE))
                .isEmpty();
        assertThat(HidingColour.of(new CieLab(0, 0, 0), Viewing.D65_10, Saunderson.NONE))
                .isEmpty();
    }

    /** 4 % come back from the surface alone, so L* = 17 (2.3 %) was measured without it. */
    @Test
    void knowsColoursDarkerThanTheirSurface() {
        assertThat(HidingColour.of(new CieLab(17, 0, 0), Viewing.D65_10, new Saunderson(0.04, 0.6)))
                .isEmpty();
    }
}
