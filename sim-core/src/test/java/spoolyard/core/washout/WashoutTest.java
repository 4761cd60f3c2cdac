package spoolyard.core.washout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Washout against closed forms calculated elsewhere (recomputed to 15 digits); the source stands beside each table. */
class WashoutTest {
    /** Dead time and stirred tank, Levenspiel 1999, ch. 11-12. A turnover is the dead time and the tank's time together. */
    @ParameterizedTest
    @CsvFileSource(resources = "plug_and_tank.csv", numLinesToSkip = 1)
    void washesOutAPlugAndATank(double tankS, double deadS, double timeS, double newShare) {
        Washout washout = new PlugAndTank(deadS / (deadS + tankS));

        assertThat(washout.oldShare(timeS / (deadS + tankS))).isEqualTo(1 - newShare, within(1e-13));
    }

    /** Its inverse. */
    @ParameterizedTest
    @CsvFileSource(resources = "plug_and_tank_time.csv", numLinesToSkip = 1)
    void knowsWhenAPlugAndATankAreClean(double tankS, double deadS, double oldShare, double timeS) {
        Washout washout = new PlugAndTank(deadS / (deadS + tankS));

        assertThat(washout.turnovers(oldShare) * (deadS + tankS)).isEqualTo(timeS, within(1e-9));
    }

    /** Levenspiel 1999, ch. 14. */
    @ParameterizedTest
    @CsvFileSource(resources = "tanks_in_series.csv", numLinesToSkip = 1)
    void washesOutTanksInSeries(int tanks, double turnovers, double density, double newShare, double variance) {
        assertThat(new TanksInSeries(tanks).oldShare(turnovers)).isEqualTo(1 - newShare, within(1e-13));
    }

    /** Pinto and Tadmor 1970 (closed form from memory, derived a second time and checked for a mean of 1). */
    @ParameterizedTest
    @CsvFileSource(resources = "single_screw.csv", numLinesToSkip = 1)
    void washesOutASingleScrew(double turnovers, double depth, double otherDepth, double newShare) {
        assertThat(new SingleScrew().oldShare(turnovers)).isEqualTo(1 - newShare, within(1e-9));
    }

    /** Levenspiel 1999, ch. 15. */
    @ParameterizedTest
    @CsvFileSource(resources = "laminar_pipe_newtonian.csv", numLinesToSkip = 1)
    void washesOutAPipe(double turnovers, double density, double newShare) {
        assertThat(new LaminarPipe(1).oldShare(turnovers)).isEqualTo(1 - newShare, within(1e-13));
    }

    /** Tadmor and Gogos. */
    @ParameterizedTest
    @CsvFileSource(resources = "laminar_pipe_power_law.csv", numLinesToSkip = 1)
    void washesOutAPipeOfPowerLawMelt(double index, double first, double turnovers, double newShare) {
        assertThat(new LaminarPipe(index).oldShare(turnovers)).isEqualTo(1 - newShare, within(1e-12));
    }

    /** By hand: a stirred tank needs ln(100), a Newtonian pipe 1 / (2 sqrt(0.01)) turnovers for 1 %. */
    @ParameterizedTest
    @CsvSource({"0.01, 4.605170185988091, 5", "0.0001, 9.210340371976182, 50"})
    void needsMoreTurnoversInAPipeThanInATank(double oldShare, double tank, double pipe) {
        assertThat(new TanksInSeries(1).turnovers(oldShare)).isEqualTo(tank, within(1e-12));
        assertThat(new PlugAndTank(0).turnovers(oldShare)).isEqualTo(tank, within(1e-12));
        assertThat(new LaminarPipe(1).turnovers(oldShare)).isEqualTo(pipe, within(1e-9));
    }
}
