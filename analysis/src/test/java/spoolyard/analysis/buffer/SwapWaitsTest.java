package spoolyard.analysis.buffer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class SwapWaitsTest {
    /** Hand: of 1, 2, 3, 4, 10 s half are served within 3 s, 80 % within 4 s, and 2 of 5 wait longer than 3 s. */
    @Test
    void tellsWithinWhatTimeAShareIsServed() {
        SwapWaits waits = new SwapWaits(3, 10, 1, 4, 2);

        assertThat(waits.quantileS(0.5)).isEqualTo(3);
        assertThat(waits.quantileS(0.8)).isEqualTo(4);
        assertThat(waits.quantileS(1)).isEqualTo(10);
        assertThat(waits.shareAbove(3)).isEqualTo(0.4);
        assertThat(waits.meanS()).isCloseTo(4, within(1e-12));
    }

    @Test
    void knowsNothingWithoutAnyWait() {
        assertThat(new SwapWaits().quantileS(0.5)).isNaN();
        assertThat(new SwapWaits().count()).isZero();
    }
}
