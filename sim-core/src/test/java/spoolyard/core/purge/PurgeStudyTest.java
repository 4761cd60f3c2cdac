package spoolyard.core.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import spoolyard.core.colour.Saunderson;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.PurgeEstimate;
import spoolyard.core.washout.PlugAndTank;

class PurgeStudyTest {
    /** Colours of the invented reference plant. */
    private static final List<Colour> COLOURS = List.of(
            new Colour("NAT", "Natural", 88, 0, 6, 1, 0.2, 0),
            new Colour("WHT", "White", 95, -1, 2, 1, 0.6, 0.04),
            new Colour("YEL", "Yellow", 84, 4, 80, 2, 1, 0.03),
            new Colour("LGR", "Light grey", 74, 0, -1, 2, 0.9, 0.025),
            new Colour("SIL", "Silver", 66, 0, 0, 2, 1.1, 0.02),
            new Colour("ORG", "Orange", 63, 52, 62, 2, 1.5, 0.03),
            new Colour("RED", "Red", 43, 58, 38, 3, 2.2, 0.03),
            new Colour("BLU", "Blue", 34, 10, -48, 3, 2.6, 0.03),
            new Colour("NVY", "Navy", 22, 4, -22, 4, 3.2, 0.035),
            new Colour("BLK", "Black", 17, 0, 0, 4, 4, 0.03));

    private static PurgeModel model(double tolerance, double exponent, double resin) {
        PurgeModel.Looks looks = new PurgeModel.Looks(Viewing.D65_10, Saunderson.NONE, tolerance);
        return new PurgeModel(looks, new PlugAndTank(0.4), 1.8, exponent, resin);
    }

    /**
     * The share of old melt that the new colour hides, recomputed apart from this code in another language, with library
     * routines for the linear systems and the roots.
     */
    @ParameterizedTest(name = "{0} to {1}")
    @CsvFileSource(resources = "clean_shares.csv", numLinesToSkip = 1)
    void findsHowMuchOfTheOldColourTheNewOneHides(
            String from, String to, double exponent, double tolerance, double resin, double share) {
        PurgeModel model = model(tolerance, exponent, resin);
        PurgeStudy study = PurgeStudy.of(COLOURS, model.looks());

        assertThat(study.cleanShare(from, to, study.cleanRatio(from, to), model) / share)
                .isEqualTo(1, within(1e-7));
    }

    /**
     * By hand, for two greys that scatter alike: halfway between L* = 90 and 89 CIEDE2000 is 1 / S_L with S_L = 1 + 0.015
     * 39.5^2 / sqrt(20 + 39.5^2), so L* may fall by S_L (taken once more at the new middle); K/S of that L* lies so far on
     * the way from white to black as black may share.
     */
    @Test
    void agreesWithTwoGreysByHand() {
        double fall = 1;
        for (int i = 0; i < 20; i++) {
            double fromMiddle = Math.pow(90 - fall / 2 - 50, 2);
            fall = 1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle);
        }
        double share = (kOverS(90 - fall) - kOverS(90)) / (kOverS(20) - kOverS(90));
        Colour light = new Colour("L", "Light", 90, 0, 0, 1, 1, 0.03);
        Colour dark = new Colour("D", "Dark", 20, 0, 0, 1, 1, 0.03);
        PurgeModel model = model(1, 1, 0.002);

        double holdUps = PurgeStudy.of(List.of(light, dark), model.looks()).holdUps("D", "L", model);

        assertThat(holdUps).isEqualTo(1.8 * (0.4 - 0.6 * Math.log(share)), within(1e-6));
    }

    private static double kOverS(double lightness) {
        double y = Math.pow((lightness + 16) / 116, 3);
        return (1 - y) * (1 - y) / (2 * y);
    }

    @Test
    void needsNothingBetweenColoursThatLookTheSame() {
        Colour one = new Colour("A", "One red", 43, 58, 38, 3, 2.2, 0.03);
        Colour other = new Colour("B", "Another red", 43.2, 58.1, 38.1, 3, 2.2, 0.03);
        PurgeModel model = model(1, 1, 0.002);

        PurgeEstimate estimate =
                PurgeStudy.of(List.of(one, other), model.looks()).estimate(model);

        assertThat(estimate.pairs())
                .containsExactly(new PurgeEstimate.Pair("A", "B", 0), new PurgeEstimate.Pair("B", "A", 0));
    }

    @Test
    void leavesOutColoursThatNoSurfaceCanHave() {
        Colour impossible = new Colour("X", "Beyond red", 60, 120, 90, 3, 2.2, 0.03);
        PurgeModel model = model(1, 1, 0.002);

        PurgeStudy study = PurgeStudy.of(List.of(COLOURS.get(0), impossible), model.looks());

        assertThat(PurgeStudy.isPossible(impossible, model.looks())).isFalse();
        assertThat(study.estimate(model).pairs()).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> study.cleanRatio("NAT", "X"));
    }
}
