package spoolyard.scenarios.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

final class QuantityTest {
    /** Source of the factors: the definitions of minute, hour, day, litre, tonne and the SI prefixes (SI brochure). */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        25 s,        TIME,            25
        1.5 min,     TIME,            90
        1.8 h,       TIME,            6480
        2 days,      TIME,            172800
        4 weeks,     TIME,            2419200
        850 g,       MASS,            0.85
        2 t,         MASS,            2000
        18 kg/h,     MASS_RATE,       18
        50 g/min,    MASS_RATE,       3
        60 m,        LENGTH,          60
        1.75 mm,     DIAMETER,        1.75
        160 m/min,   SPEED,           2.6666666666666665
        3 m/s,       SPEED,           3
        205 °C,      TEMPERATURE,     205
        1.24 g/cm3,  DENSITY,         1240
        1.24 kg/l,   DENSITY,         1240
        45 s/K,      TIME_PER_KELVIN, 45
        0.8 %,       SHARE,           0.008
        0.03 %,      SHARE,           0.0003
        2400 spools, SPOOLS,          2400
        1e3 kg,      MASS,            1000
        60m,         LENGTH,          60
        """)
    void convertsToTheNearestDouble(String text, Dimension dimension, double expected) {
        assertThat(Quantity.parse(text).flatMap(q -> q.in(dimension))).contains(expected);
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void readsTheExampleOfEveryDimension(Dimension dimension) {
        assertThat(Quantity.of(dimension.example(), dimension)).isPositive();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "kg", "1_000 kg", "0x10 kg", "1,5 kg", "1.5. kg", ".5 kg", "1 KG", "NaN kg", "1e400 kg"})
    void refusesWhatIsNoMass(String text) {
        assertThat(Quantity.parse(text).flatMap(q -> q.in(Dimension.MASS))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.1", "1.75", "2.85", "1.07", "0.85", "64.3", "1.1"})
    void losesNothingWhereTheFactorIsOne(String number) {
        assertThat(Quantity.of(number + " kg", Dimension.MASS)).isEqualTo(Double.parseDouble(number));
        assertThat(Quantity.of(number + " g/cm3", Dimension.DENSITY))
                .isEqualTo(new BigDecimal(number).movePointRight(3).doubleValue());
    }
}
