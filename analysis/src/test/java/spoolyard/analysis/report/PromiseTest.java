package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.plant.Order;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult;

final class PromiseTest {
    private static final long DAY = 24 * Ticks.PER_HOUR;
    private static final long HORIZON = 7 * DAY;

    @Test
    void isOnTimeWhenPackedAtTheLastMoment() {
        Promise promise = promise(3 * DAY, 3 * DAY);

        assertThat(promise.isLate()).isFalse();
        assertThat(promise.daysLate()).isZero();
    }

    @Test
    void isLateByTheDaysFromDueToPacked() {
        Promise promise = promise(3 * DAY, 3 * DAY + DAY / 2);

        assertThat(promise.isLate()).isTrue();
        assertThat(promise.daysLate()).isEqualTo(0.5);
    }

    @Test
    void isLateUpToTheEndWhenDueInTheRunAndNeverPacked() {
        Promise promise = promise(5 * DAY, Ticks.NEVER);

        assertThat(promise.isLate()).isTrue();
        assertThat(promise.daysLate()).isEqualTo(2);
    }

    @Test
    void isUndecidedWhenDueAfterTheEndAndNotPacked() {
        Promise promise = promise(8 * DAY, Ticks.NEVER);

        assertThat(promise.isDecided()).isFalse();
        assertThat(promise.isLate()).isFalse();
    }

    /** Worked by hand: of three decided orders one is late, by half a day with 400 spools: 200 spool-days, 2/3 on time. */
    @Test
    void addsUpOverTheBook() {
        List<Promise> promises = List.of(
                promise(3 * DAY, 2 * DAY),
                promise(3 * DAY, 3 * DAY + DAY / 2),
                promise(9 * DAY, 6 * DAY),
                promise(9 * DAY, Ticks.NEVER));

        assertThat(Promise.lateOrders(promises)).isEqualTo(1);
        assertThat(Promise.packedOrders(promises)).isEqualTo(3);
        assertThat(Promise.lateSpoolDays(promises)).isEqualTo(200);
        assertThat(Promise.onTimePercent(promises)).isCloseTo(200.0 / 3, within(1e-12));
    }

    @Test
    void hasNoShareOnTimeWhenNothingIsDecided() {
        assertThat(Promise.onTimePercent(List.of(promise(9 * DAY, Ticks.NEVER))))
                .isNaN();
    }

    private static Promise promise(long dueTick, long packedTick) {
        Order sample = SamplePlant.of(1, 1).book().orders().get(0);
        Order order = new Order("SO-1", sample.product(), 400, 0, dueTick, 1, 1, List.of("L1"));
        return new Promise(
                order, new RunResult.OrderResult("SO-1", "L1", 0, packedTick, packedTick, 400, 400), HORIZON);
    }
}
