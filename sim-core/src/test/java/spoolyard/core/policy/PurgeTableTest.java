package spoolyard.core.policy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.core.plant.Accumulator;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.PurgeFormula;
import spoolyard.core.plant.PurgeFormula.ClassStep;
import spoolyard.core.plant.PurgeFormula.ColourFactor;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.Winder;

/**
 * Purge of pairs of colours. The washout is a plug-flow share p = 0.4 in series with a stirred share: after a mass of
 * M (p + (1 - p) ln(1/r)) the share r of the old colour is left (dead time + stirred tank: O. Levenspiel, Chemical
 * Reaction Engineering, 3rd ed. 1999, ch. 11-12). Values below are worked by hand from it; residuals and dead-zone factors
 * are those of the invented reference plant.
 */
class PurgeTableTest {
    private static final Polymer PLA = new Polymer("PLA", 1240, 1, 205, 1200);
    private static final Polymer PETG = new Polymer("PETG", 1270, 0.95, 235, 1200);
    private static final PurgeFormula FORMULA = new PurgeFormula(
            0.4,
            List.of(
                    new ClassStep(2, 3, 0.05, 1.0),
                    new ClassStep(0, 1, 0.03, 1.0),
                    new ClassStep(-1, -1, 0.01, 1.3),
                    new ClassStep(-2, -2, 0.003, 1.7),
                    new ClassStep(-3, -3, 0.0003, 2.2)),
            60,
            3,
            List.of(new ColourFactor("NAT", 1.25)),
            List.of(new ColourFactor("SIL", 1.3)));

    private static Colour colour(String code, double lightness, double a, double b, int shadeClass) {
        return new Colour(code, code, lightness, a, b, shadeClass, 1, 0.03);
    }

    private static Product product(Polymer polymer, Colour colour) {
        return new Product(polymer, colour, 1.75, 1);
    }

    private static Product grey(String code, int shadeClass) {
        return product(PLA, colour(code, 95 - 20 * shadeClass, 0, 0, shadeClass));
    }

    private static Line line(String name, double holdUpKg) {
        StartStop start = new StartStop(
                new HeatUp.Timed(Law.ZERO),
                Law.ZERO,
                Law.ZERO,
                Law.ZERO,
                0,
                Law.ZERO,
                0,
                EndOfPeriod.SHUT_DOWN,
                0,
                CrewNeed.NOBODY);
        return new Line(
                name,
                1,
                18,
                List.of("PLA", "PETG"),
                List.of(1.75),
                holdUpKg,
                new Accumulator(0, 60),
                new Winder.Manual(2.6, Law.ZERO, Law.ZERO, CrewNeed.NOBODY),
                0,
                new OverflowPolicy.Waste(),
                0,
                0,
                0,
                start,
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                true,
                Place.ORIGIN,
                Optional.empty(),
                Optional.empty());
    }

    private static PurgeTable table(MeasuredPurge... measured) {
        return new PurgeTable(new ChangeoverRules(
                List.of(measured),
                FORMULA,
                List.of(),
                List.of(),
                List.of(),
                0,
                0,
                true,
                ChangeoverRules.Approval.NONE));
    }

    @ParameterizedTest
    @CsvSource({
        // class from, class to, hold-ups = k (0.4 + 0.6 ln(1/r))
        "1, 4, 2.197",
        "1, 3, 2.197",
        "1, 2, 2.504",
        "2, 2, 2.504",
        "4, 3, 4.112",
        "4, 2, 6.605",
        "4, 1, 11.587"
    })
    void hasTheHoldUpsOfTheWashout(int fromClass, int toClass, double holdUps) {
        double kg = table().purgeKg(line("L2", 0.85), grey("AAA", fromClass), grey("BBB", toClass))
                .getAsDouble();

        assertThat(kg).isCloseTo(0.85 * holdUps, within(0.85 * 5e-4));
    }

    @Test
    void darkToLightCostsFiveTimesLightToDark() {
        Line line = line("L2", 0.85);

        double ratio = table().purgeKg(line, grey("BLK", 4), grey("WHT", 1)).getAsDouble()
                / table().purgeKg(line, grey("WHT", 1), grey("BLK", 4)).getAsDouble();

        assertThat(ratio).isCloseTo(11.587 / 2.197, within(0.005));
    }

    @Test
    void needsNothingForTheSameColourAndPolymer() {
        assertThat(table().purgeKg(line("L2", 0.85), grey("BLK", 4), grey("BLK", 4)))
                .hasValue(0);
    }

    @Test
    void washesOutTheOldPolymerEvenWithoutAChangeOfColour() {
        Colour black = colour("BLK", 17, 0, 0, 4);

        assertThat(table().purgeKg(line("L2", 0.85), product(PLA, black), product(PETG, black))
                        .getAsDouble())
                .isCloseTo(0.85 * 2.504, within(1e-3));
    }

    @Test
    void coloursOfOneClassFarApartNeedAThirdOfTheResidual() {
        Product red = product(PLA, colour("RED", 43, 58, 38, 3));
        Product blue = product(PLA, colour("BLU", 34, 10, -48, 3));

        // Delta E*ab = sqrt(9^2 + 48^2 + 86^2) = 98.9 > 60, so r = 0.01: 0.4 + 0.6 x 4.605 = 3.163 hold-ups
        assertThat(table().purgeKg(line("L2", 0.85), red, blue).getAsDouble()).isCloseTo(0.85 * 3.163, within(1e-3));
    }

    @Test
    void factorsGoWithTheirColours() {
        double plain =
                table().purgeKg(line("L2", 1), grey("AAA", 2), grey("BBB", 1)).getAsDouble();

        assertThat(table().purgeKg(line("L2", 1), grey("SIL", 2), grey("NAT", 1))
                        .getAsDouble())
                .isCloseTo(plain * 1.25 * 1.3, within(1e-9));
    }

    @Test
    void theMostSpecificMeasuredEntryWins() {
        PurgeTable table = table(
                new MeasuredPurge("*", "*", "BLK", "WHT", 10),
                new MeasuredPurge("*", "PLA", "BLK", "WHT", 9),
                new MeasuredPurge("L2", "*", "BLK", "WHT", 8),
                new MeasuredPurge("L2", "PETG", "BLK", "WHT", 7));
        Colour black = colour("BLK", 17, 0, 0, 4);
        Colour white = colour("WHT", 95, 0, 0, 1);

        assertThat(table.purgeKg(line("L2", 1), product(PETG, black), product(PETG, white)))
                .hasValue(7);
        assertThat(table.purgeKg(line("L2", 1), product(PLA, black), product(PLA, white)))
                .hasValue(8);
        assertThat(table.purgeKg(line("L3", 1), product(PLA, black), product(PLA, white)))
                .hasValue(9);
        assertThat(table.purgeKg(line("L3", 1), product(PETG, black), product(PETG, white)))
                .hasValue(10);
    }

    private static PurgeTable throughBlack(MeasuredPurge... measured) {
        Colour black = colour("BLK", 17, 0, 0, 4);
        return new PurgeTable(new ChangeoverRules(
                List.of(measured),
                FORMULA,
                List.of(),
                List.of(),
                List.of(),
                0,
                0,
                true,
                ChangeoverRules.Approval.NONE,
                List.of(new ChangeoverRules.ThroughColour(List.of("RED"), List.of("BLU", "RED"), black)),
                Optional.empty()));
    }

    @Test
    void aChangeThroughAThirdColourPurgesBothHalves() {
        Product red = product(PLA, colour("RED", 43, 58, 38, 3));
        Product blue = product(PLA, colour("BLU", 34, 10, -48, 3));
        Product black = product(PLA, colour("BLK", 17, 0, 0, 4));
        Line line = line("L2", 0.85);
        double halves = table().purgeKg(line, red, black).getAsDouble()
                + table().purgeKg(line, black, blue).getAsDouble();

        assertThat(throughBlack().purgeKg(line, red, blue)).hasValue(halves);
        assertThat(throughBlack().purgeKg(line, blue, red)).isEqualTo(table().purgeKg(line, blue, red));
        assertThat(throughBlack().purgeKg(line, red, red)).hasValue(0);
    }

    @Test
    void aMeasuredPairWinsOverTheRuleAndMeasuredHalvesCount() {
        Product red = product(PLA, colour("RED", 43, 58, 38, 3));
        Product blue = product(PLA, colour("BLU", 34, 10, -48, 3));
        MeasuredPurge first = new MeasuredPurge("*", "*", "RED", "BLK", 2);
        MeasuredPurge second = new MeasuredPurge("*", "*", "BLK", "BLU", 3);

        assertThat(throughBlack(first, second).purgeKg(line("L2", 1), red, blue))
                .hasValue(5);
        assertThat(throughBlack(first, second, new MeasuredPurge("*", "*", "RED", "BLU", 9))
                        .purgeKg(line("L2", 1), red, blue))
                .hasValue(9);
    }

    @Test
    void saysWhenItKnowsNothingOfAPair() {
        PurgeTable bare = new PurgeTable(new ChangeoverRules(
                List.of(),
                new PurgeFormula(0.4, List.of(), 60, 3, List.of(), List.of()),
                List.of(),
                List.of(),
                List.of(),
                0,
                0,
                true,
                ChangeoverRules.Approval.NONE));

        assertThat(bare.purgeKg(line("L2", 1), grey("AAA", 1), grey("BBB", 2))).isEmpty();
    }
}
