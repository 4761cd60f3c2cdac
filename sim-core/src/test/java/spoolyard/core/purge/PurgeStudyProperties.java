package spoolyard.core.purge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import spoolyard.core.colour.Saunderson;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Colour;
import spoolyard.core.washout.LaminarPipe;
import spoolyard.core.washout.PlugAndTank;
import spoolyard.core.washout.SingleScrew;
import spoolyard.core.washout.TanksInSeries;
import spoolyard.core.washout.Washout;

/** What every estimate must obey, for any two colours. */
class PurgeStudyProperties {
    /** Any colour within a gamut that pigments can fill. */
    @Provide
    Arbitrary<Colour> colours() {
        return Combinators.combine(
                        Arbitraries.doubles().between(15, 95),
                        Arbitraries.doubles().between(0, 1),
                        Arbitraries.doubles().between(0, 6.28),
                        Arbitraries.doubles().between(0.1, 5),
                        Arbitraries.doubles().between(0, 0.05))
                .as((lightness, vividness, hue, strength, concentrate) -> {
                    double chroma = vividness * Math.min(lightness, 105 - lightness) * 0.7;
                    return new Colour(
                            "C",
                            "Any",
                            lightness,
                            chroma * Math.cos(hue),
                            chroma * Math.sin(hue),
                            1,
                            strength,
                            concentrate);
                });
    }

    @Provide
    Arbitrary<Washout> laws() {
        return Arbitraries.of(
                new PlugAndTank(0.4),
                new PlugAndTank(0),
                new TanksInSeries(3),
                new SingleScrew(),
                new LaminarPipe(0.5));
    }

    private static Colour coded(String code, Colour colour) {
        return new Colour(
                code,
                code,
                colour.lightness(),
                colour.a(),
                colour.b(),
                1,
                colour.pigmentStrength(),
                colour.concentrateShare());
    }

    private static PurgeModel model(double tolerance, Washout law, double volume) {
        PurgeModel.Looks looks = new PurgeModel.Looks(Viewing.D65_10, Saunderson.NONE, tolerance);
        return new PurgeModel(looks, law, volume, 1, 0.002);
    }

    private static double holdUps(Colour from, Colour to, PurgeModel model) {
        List<Colour> both = List.of(coded("A", from), coded("B", to));
        both.forEach(colour -> Assume.that(PurgeStudy.isPossible(colour, model.looks())));
        return PurgeStudy.of(both, model.looks()).holdUps("A", "B", model);
    }

    @Property(seed = "11", tries = 300)
    void aWiderToleranceNeverPurgesMore(
            @ForAll("colours") Colour from,
            @ForAll("colours") Colour to,
            @ForAll("laws") Washout law,
            @ForAll @DoubleRange(min = 0.3, max = 4) double tolerance,
            @ForAll @DoubleRange(min = 1, max = 3) double factor) {
        assertThat(holdUps(from, to, model(tolerance * factor, law, 1)))
                .isLessThanOrEqualTo(holdUps(from, to, model(tolerance, law, 1)) * (1 + 1e-9));
    }

    @Property(seed = "12", tries = 100)
    void purgesInProportionToTheVolume(
            @ForAll("colours") Colour from,
            @ForAll("colours") Colour to,
            @ForAll("laws") Washout law,
            @ForAll @DoubleRange(min = 0.5, max = 4) double volume) {
        double one = holdUps(from, to, model(1, law, 1));

        assertThat(holdUps(from, to, model(1, law, volume)))
                .isBetween(volume * one * (1 - 1e-12), volume * one * (1 + 1e-12));
    }

    /** Nobody tells the estimate which grey is the lighter; that light to dark is cheap comes out of the mixing. */
    @Property(seed = "13", tries = 200)
    void lightToDarkIsCheapAmongGreysOfOnePower(
            @ForAll @DoubleRange(min = 15, max = 85) double dark,
            @ForAll @DoubleRange(min = 3, max = 80) double lighter,
            @ForAll("laws") Washout law) {
        Assume.that(dark + lighter <= 96);
        Colour darkGrey = new Colour("D", "Dark", dark, 0, 0, 1, 1, 0.03);
        Colour lightGrey = new Colour("L", "Light", dark + lighter, 0, 0, 1, 1, 0.03);

        assertThat(holdUps(lightGrey, darkGrey, model(1, law, 1)))
                .isLessThan(holdUps(darkGrey, lightGrey, model(1, law, 1)));
    }

    /** More concentrate of the new colour, or less of the old, hides more. */
    @Property(seed = "14", tries = 200)
    void moreConcentrateHidesMore(
            @ForAll("colours") Colour from,
            @ForAll("colours") Colour to,
            @ForAll("laws") Washout law,
            @ForAll @DoubleRange(min = 0.01, max = 0.05) double more) {
        Colour stronger = new Colour(
                "S", "Stronger", to.lightness(), to.a(), to.b(), 1, to.pigmentStrength(), to.concentrateShare() + more);
        PurgeModel model = model(1, law, 1);

        assertThat(holdUps(from, stronger, model)).isLessThanOrEqualTo(holdUps(from, to, model) * (1 + 1e-9));
    }
}
