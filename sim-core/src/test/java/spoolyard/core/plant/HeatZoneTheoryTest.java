package spoolyard.core.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A heated lump against a published example, and against its own differential equation solved in small steps. */
class HeatZoneTheoryTest {
    /** 3 kW, 45 kJ/K, 2.5 h: loses 0.005 kW/K. */
    private static final HeatZone BARREL = new HeatZone("barrel", 3, 45, 9000, 3000, 0);

    /**
     * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, example 5.1 (from memory): a thermocouple junction of
     * 1 s goes from 25 °C to within 1 °C of a gas of 200 °C in 5.2 s. A heater that would reach 200 °C in the long run stands
     * for the gas.
     */
    @Test
    void reachesTheGasAsTheTextbooksThermocouple() {
        HeatZone junction = new HeatZone("junction", 180, 1, 1, 1, 0);

        assertThat(junction.highestC(20)).isEqualTo(200);
        assertThat(junction.heatingS(25, 199, 20)).isCloseTo(5.2, within(0.05));
        assertThat(junction.cooledC(199, 5.2, 24)).isCloseTo(25, within(0.05));
    }

    /** Runge-Kutta of fourth order, half a second a step. */
    @Test
    void solvesItsDifferentialEquation() {
        double seconds = BARREL.heatingS(20, 220, 20);

        assertThat(stepwiseC(3, 20, seconds, 9000)).isCloseTo(220, within(1e-8));
        assertThat(BARREL.heatedC(20, seconds, 20)).isCloseTo(220, within(1e-9));
        assertThat(BARREL.cooledC(220, 5000, 20)).isCloseTo(stepwiseC(0, 220, 5000, 9000), within(1e-8));
        assertThat(BARREL.fanCooledC(220, 5000, 20)).isCloseTo(stepwiseC(0, 220, 5000, 3000), within(1e-8));
        assertThat(BARREL.fanCoolingTimeS(220, BARREL.fanCooledC(220, 5000, 20), 20))
                .isCloseTo(5000, within(1e-8));
    }

    /** What the heater gives is stored or lost: 3 kW x t = 45 kJ/K x 200 K + 0.005 kW/K x the area under the excess. */
    @Test
    void balancesItsEnergy() {
        double seconds = BARREL.heatingS(20, 220, 20);
        double areaKs = 600 * seconds - 600 * 9000 * (1 - Math.exp(-seconds / 9000));

        assertThat(seconds).isCloseTo(9000 * Math.log(1.5), within(1e-9));
        assertThat(3 * seconds).isCloseTo(45 * 200 + 0.005 * areaKs, within(1e-8));
        assertThat(BARREL.holdingKw(220, 20)).isCloseTo(1.0, within(1e-12));
    }

    private static double stepwiseC(double kw, double fromC, double seconds, double timeConstantS) {
        int steps = (int) Math.ceil(seconds * 2);
        double h = seconds / steps;
        double t = fromC;
        for (int i = 0; i < steps; i++) {
            double k1 = slope(kw, t, timeConstantS);
            double k2 = slope(kw, t + h / 2 * k1, timeConstantS);
            double k3 = slope(kw, t + h / 2 * k2, timeConstantS);
            double k4 = slope(kw, t + h * k3, timeConstantS);
            t += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
        return t;
    }

    private static double slope(double kw, double temperatureC, double timeConstantS) {
        return kw / 45 - (temperatureC - 20) / timeConstantS;
    }
}
