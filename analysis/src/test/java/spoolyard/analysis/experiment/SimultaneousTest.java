package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class SimultaneousTest {
    /** Source: Law, Simulation Modeling and Analysis, section 9.7: ten intervals at 99 % hold together at 90 %. */
    @Test
    void sharesTheRiskAmongTheStatements() {
        assertThat(new Simultaneous(0.90, 10).eachLevel()).isCloseTo(0.99, within(1e-12));
        assertThat(new Simultaneous(0.95, 1).eachLevel()).isCloseTo(0.95, within(1e-12));
    }

    @Test
    void refusesWhatIsNoLevel() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Simultaneous(1, 2))
                .withMessageStartingWith("level = 1.0, statements = 2.");
    }
}
