package spoolyard.core.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Reflectance found for a colour: of any surface whatever, in any light, it has exactly the colour asked for. */
class HidingColourProperties {
    private static final int BANDS = 36;

    /** Steps and humps of any height and place: far more vivid than pigments are. */
    @Provide
    Arbitrary<double[]> surfaces() {
        Arbitrary<Double> level = Arbitraries.doubles().between(0.02, 0.95);
        Arbitrary<Double> edge = Arbitraries.doubles().between(-5, 40);
        Arbitrary<Double> width = Arbitraries.doubles().between(1, 12);
        return net.jqwik.api.Combinators.combine(level, level, level, edge, edge, width)
                .as((low, middle, high, first, second, soft) -> {
                    double[] surface = new double[BANDS];
                    for (int i = 0; i < BANDS; i++) {
                        double one = 1 / (1 + Math.exp(-(i - first) / soft));
                        double two = 1 / (1 + Math.exp(-(i - second) / soft));
                        surface[i] = low + (middle - low) * one * (1 - two) + (high - low) * one * two;
                    }
                    return surface;
                });
    }

    @Property(seed = "5", tries = 400)
    void meetsTheColourOfAnySurface(@ForAll("surfaces") double[] surface, @ForAll Viewing viewing) {
        CieLab lab = viewing.lab(surface);

        CieLab found =
                HidingColour.of(lab, viewing, Saunderson.NONE).orElseThrow().lab();

        assertThat(found.lightness()).isEqualTo(lab.lightness(), within(1e-6));
        assertThat(found.a()).isEqualTo(lab.a(), within(1e-6));
        assertThat(found.b()).isEqualTo(lab.b(), within(1e-6));
    }

    @Property(seed = "6", tries = 100)
    void lookTheSameWithAndWithoutASurface(@ForAll("surfaces") double[] surface) {
        Saunderson gloss = new Saunderson(0.04, 0.6);
        double[] glossy = new double[BANDS];
        for (int i = 0; i < BANDS; i++) {
            glossy[i] = gloss.measured(surface[i]);
        }
        CieLab lab = Viewing.D65_10.lab(glossy);

        HidingColour.of(lab, Viewing.D65_10, gloss)
                .ifPresent(found ->
                        assertThat(ColourDifference.ciede2000(found.lab(), lab)).isLessThan(1e-6));
    }
}
