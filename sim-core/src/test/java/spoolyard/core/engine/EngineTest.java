package spoolyard.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.core.quantity.Ticks;

final class EngineTest {
    private final Recorder recorder = new Recorder();
    private final Engine engine = recorder.engine;

    @Test
    void standsAtZeroBeforeTheFirstRun() {
        assertThat(engine.now()).isZero();
        assertThat(engine.executed()).isZero();
    }

    @Test
    void setsTheClockToTheEndOfAnEmptyRun() {
        engine.runUntil(500);

        assertThat(engine.now()).isEqualTo(500);
    }

    @Test
    void runsEventsUpToAndAtTheEndAndLeavesLaterOnes() {
        recorder.event(Phase.FINISH, "late").at(101);
        recorder.event(Phase.FINISH, "at the end").at(100);
        recorder.event(Phase.FINISH, "early").at(7);

        engine.runUntil(100);

        assertThat(recorder.happened).containsExactly("7 early", "100 at the end");
        assertThat(engine.now()).isEqualTo(100);
        assertThat(engine.executed()).isEqualTo(2);
    }

    @Test
    void runsWhatIsScheduledAtTheEndWhileThere() {
        TimedEvent second = recorder.event(Phase.FINISH, "second");
        recorder.event(Phase.OBSERVE, "first", () -> second.in(0)).at(100);

        engine.runUntil(100);

        assertThat(recorder.happened).containsExactly("100 first", "100 second");
    }

    @Test
    void goesOnToALaterEnd() {
        recorder.event(Phase.FINISH, "a").at(10);
        recorder.event(Phase.FINISH, "b").at(20);

        engine.runUntil(10);
        engine.runUntil(10);
        recorder.event(Phase.FINISH, "c").at(15);
        engine.runUntil(30);

        assertThat(recorder.happened).containsExactly("10 a", "15 c", "20 b");
        assertThat(engine.now()).isEqualTo(30);
    }

    @Test
    void runsTheExampleOfItsOwnDocumentation() {
        List<Long> rings = new ArrayList<>();
        TimedEvent bell = new TimedEvent(engine, Phase.CALENDAR) {
            @Override
            protected void happen() {
                rings.add(engine.now() / Ticks.PER_HOUR);
                in(8 * Ticks.PER_HOUR);
            }
        };
        bell.at(6 * Ticks.PER_HOUR);

        engine.runUntil(24 * Ticks.PER_HOUR);

        assertThat(rings).containsExactly(6L, 14L, 22L);
    }

    @Test
    void servesPhasesInTheirOrderAtOneInstant() {
        for (int i = Phase.values().length - 1; i >= 0; i--) {
            recorder.event(Phase.values()[i], Phase.values()[i].name()).at(5);
        }

        engine.runUntil(5);

        assertThat(recorder.happened)
                .containsExactly(
                        "5 FINISH", "5 RELEASE", "5 CALENDAR", "5 SERVE", "5 SIGNAL", "5 ARRIVAL", "5 OBSERVE");
    }

    @Test
    void servesOnePhaseInTheOrderOfScheduling() {
        List<String> expected = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            recorder.event(Phase.SERVE, "no " + i).at(5);
            expected.add("5 no " + i);
        }

        engine.runUntil(5);

        assertThat(recorder.happened).isEqualTo(expected);
    }

    @Test
    void reachesTheLastInstantOfTime() {
        recorder.event(Phase.OBSERVE, "last").at(Ticks.NEVER);
        recorder.event(Phase.OBSERVE, "never").at(2 * Ticks.NEVER);

        engine.runUntil(Ticks.NEVER);

        assertThat(recorder.happened).containsExactly(Ticks.NEVER + " last");
    }

    @Test
    void callsTheHookAfterEachEventAtItsInstant() {
        List<String> seen = new ArrayList<>();
        engine.afterEach(() -> seen.add(engine.now() + " after " + recorder.happened.size()));
        recorder.event(Phase.FINISH, "a").at(3);
        recorder.event(Phase.FINISH, "b").at(3);
        recorder.event(Phase.FINISH, "c").at(8);

        engine.runUntil(10);

        assertThat(seen).containsExactly("3 after 1", "3 after 2", "8 after 3");
    }

    @Test
    void refusesAMissingHook() {
        assertThatNullPointerException()
                .isThrownBy(() -> engine.afterEach(null))
                .withMessage("hook");
    }

    @Test
    void refusesAnEndInThePast() {
        engine.runUntil(50);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> engine.runUntil(49))
                .withMessage("endTick = 49. Must be >= now = 50 and <= 4503599627370496.");
    }

    @Test
    void refusesAnEndBeyondTime() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> engine.runUntil(Ticks.NEVER + 1))
                .withMessageContaining("endTick = 4503599627370497");
    }

    @Test
    void refusesToRunInsideAnEvent() {
        recorder.event(Phase.FINISH, "nested", () -> engine.runUntil(20)).at(10);

        assertThatIllegalStateException()
                .isThrownBy(() -> engine.runUntil(15))
                .withMessage("runUntil(20) at tick 10. Not allowed in an event.");
    }

    @Test
    void stopsAtTheInstantOfAnEventThatFails() {
        recorder.event(Phase.FINISH, "fails", () -> {
                    throw new ArithmeticException("planted");
                })
                .at(10);
        recorder.event(Phase.FINISH, "after").at(11);

        assertThat(catchThrowable(() -> engine.runUntil(20))).isInstanceOf(ArithmeticException.class);

        assertThat(engine.now()).isEqualTo(10);
        assertThat(recorder.happened).containsExactly("10 fails");
    }
}
