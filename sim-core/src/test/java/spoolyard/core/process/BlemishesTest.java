package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Stretches by metres, spools of 100 m. */
class BlemishesTest {
    private final Blemishes blemishes = new Blemishes();

    @Test
    void aStretchThatWaitsInTheAccumulatorIsOnTheNextSpool() {
        blemishes.begin(110);
        blemishes.end(120);

        assertThat(blemishes.takeUpTo(100)).isFalse();
        assertThat(blemishes.takeUpTo(200)).isTrue();
        assertThat(blemishes.takeUpTo(300)).isFalse();
    }

    @Test
    void aLongStretchIsOnEverySpoolItReaches() {
        blemishes.begin(90);

        assertThat(blemishes.takeUpTo(100)).isTrue();
        assertThat(blemishes.takeUpTo(200)).isTrue();
        blemishes.end(200);
        assertThat(blemishes.takeUpTo(300)).isFalse();
    }

    @Test
    void twoStretchesOnTwoSpoolsAreToldApart() {
        blemishes.begin(50);
        blemishes.end(60);
        blemishes.begin(250);
        blemishes.end(260);

        assertThat(blemishes.takeUpTo(100)).isTrue();
        assertThat(blemishes.takeUpTo(200)).isFalse();
        assertThat(blemishes.takeUpTo(300)).isTrue();
    }

    @Test
    void aStretchThatWentToWasteSpoilsNothing() {
        blemishes.begin(50);
        blemishes.end(50);

        assertThat(blemishes.takeUpTo(100)).isFalse();
    }

    @Test
    void nothingIsLeftAfterACut() {
        blemishes.begin(50);
        blemishes.clear();
        blemishes.end(60);

        assertThat(blemishes.takeUpTo(100)).isFalse();
    }
}
