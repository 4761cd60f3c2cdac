package spoolyard.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import org.junit.jupiter.api.Test;
import spoolyard.core.quantity.Ticks;

final class TimedEventTest {
    private final Recorder recorder = new Recorder();
    private final Engine engine = recorder.engine;
    private final TimedEvent swap = recorder.event(Phase.FINISH, "line L3 / swap");

    @Test
    void isScheduledOnlyWhileItIsInTheAgenda() {
        assertThat(swap.isScheduled()).isFalse();

        swap.at(5);
        assertThat(swap.isScheduled()).isTrue();
        assertThat(swap.tick()).isEqualTo(5);

        engine.runUntil(5);
        assertThat(swap.isScheduled()).isFalse();
    }

    @Test
    void isNoLongerScheduledWhenItHappens() {
        boolean[] seen = {true};
        TimedEvent[] self = new TimedEvent[1];
        self[0] = recorder.event(Phase.FINISH, "self", () -> seen[0] = self[0].isScheduled());
        self[0].at(5);

        engine.runUntil(5);

        assertThat(seen[0]).isFalse();
    }

    @Test
    void canScheduleItselfAgain() {
        TimedEvent[] self = new TimedEvent[1];
        self[0] = recorder.event(Phase.FINISH, "again", () -> self[0].in(4));
        self[0].at(1);

        engine.runUntil(10);

        assertThat(recorder.happened).containsExactly("1 again", "5 again", "9 again");
    }

    @Test
    void movesEarlierAndLater() {
        TimedEvent other = recorder.event(Phase.FINISH, "other");
        swap.at(50);
        other.at(20);

        swap.moveTo(10);
        other.moveTo(60);
        engine.runUntil(100);

        assertThat(recorder.happened).containsExactly("10 line L3 / swap", "60 other");
    }

    @Test
    void movingSchedulesWhatIsNotScheduled() {
        swap.moveTo(10);

        engine.runUntil(10);

        assertThat(recorder.happened).containsExactly("10 line L3 / swap");
    }

    @Test
    void goesBehindItsEqualsWhenMovedToTheSameInstant() {
        TimedEvent other = recorder.event(Phase.FINISH, "other");
        swap.at(10);
        other.at(10);

        swap.moveTo(10);
        engine.runUntil(10);

        assertThat(recorder.happened).containsExactly("10 other", "10 line L3 / swap");
    }

    @Test
    void doesNotHappenOnceCancelled() {
        swap.at(10);

        swap.cancel();
        swap.cancel();
        engine.runUntil(10);

        assertThat(recorder.happened).isEmpty();
        assertThat(swap.isScheduled()).isFalse();
        assertThat(engine.executed()).isZero();
    }

    @Test
    void canBeScheduledAfterCancelling() {
        swap.at(10);
        swap.cancel();

        swap.at(12);
        engine.runUntil(20);

        assertThat(recorder.happened).containsExactly("12 line L3 / swap");
    }

    @Test
    void happensAfterThePresentEventEvenInAnEarlierPhase() {
        TimedEvent finish = recorder.event(Phase.FINISH, "finish");
        recorder.event(Phase.ARRIVAL, "arrival", () -> finish.in(0)).at(10);
        recorder.event(Phase.SERVE, "serve").at(10);
        recorder.event(Phase.OBSERVE, "observe").at(10);

        engine.runUntil(10);

        assertThat(recorder.happened).containsExactly("10 serve", "10 arrival", "10 finish", "10 observe");
    }

    @Test
    void refusesThePastNamingEventAndTimes() {
        engine.runUntil(100);

        assertThatIllegalStateException()
                .isThrownBy(() -> swap.at(99))
                .withMessage("line L3 / swap: tick = 99. Must be >= now = 100 and <= 9007199254740992.");
        assertThat(swap.isScheduled()).isFalse();
    }

    @Test
    void refusesANegativeWhile() {
        engine.runUntil(100);

        assertThatIllegalStateException()
                .isThrownBy(() -> swap.in(-1))
                .withMessageContaining("line L3 / swap: tick = 99");
    }

    @Test
    void refusesAWhileThatOverflows() {
        engine.runUntil(100);

        assertThatIllegalStateException().isThrownBy(() -> swap.in(Long.MAX_VALUE));
    }

    @Test
    void refusesAnInstantThatADoubleCannotCount() {
        assertThatIllegalStateException()
                .isThrownBy(() -> swap.at(2 * Ticks.NEVER + 1))
                .withMessageContaining("tick = 9007199254740993");
    }

    @Test
    void refusesToBeScheduledTwice() {
        swap.at(10);

        assertThatIllegalStateException()
                .isThrownBy(() -> swap.at(20))
                .withMessage("line L3 / swap: already scheduled for tick 10, at(20) at tick 0.");
        assertThat(swap.tick()).isEqualTo(10);
    }

    @Test
    void staysWhereItWasWhenAMoveIsRefused() {
        engine.runUntil(100);
        swap.at(150);

        assertThatIllegalStateException().isThrownBy(() -> swap.moveTo(50));

        assertThat(swap.tick()).isEqualTo(150);
        engine.runUntil(200);
        assertThat(recorder.happened).containsExactly("150 line L3 / swap");
    }

    @Test
    void hasNoInstantWhileNotScheduled() {
        assertThatIllegalStateException()
                .isThrownBy(swap::tick)
                .withMessage("line L3 / swap: tick() at tick 0. Must be scheduled.");
    }

    @Test
    void refusesAMissingPhase() {
        assertThatNullPointerException()
                .isThrownBy(() -> recorder.event(null, "no phase"))
                .withMessage("phase");
    }
}
