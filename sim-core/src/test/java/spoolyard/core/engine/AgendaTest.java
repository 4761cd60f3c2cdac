package spoolyard.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;
import umontreal.ssj.simevents.eventlist.EventList;

/** What SSJ's {@code EventList} asks of an event list. */
final class AgendaTest {
    private final Recorder recorder = new Recorder();
    private final Engine engine = recorder.engine;
    private final EventList agenda = engine.clock().getEventList();
    private final TimedEvent a = recorder.event(Phase.SERVE, "a");
    private final TimedEvent b = recorder.event(Phase.FINISH, "b");
    private final TimedEvent c = recorder.event(Phase.SERVE, "c");

    @BeforeEach
    void schedule() {
        c.at(9);
        a.at(5);
        b.at(5);
    }

    @Test
    void listsEventsInTheOrderInWhichTheyWillHappen() {
        assertThat(agenda).extracting(Event::toString).containsExactly("b", "a", "c");
        assertThat(agenda.listIterator()).toIterable().hasSize(3);
        assertThat(agenda.getFirst()).hasToString("b");
    }

    @Test
    void showsTimeAndPriorityTheWayOfTheSimulator() {
        Event first = agenda.getFirst();

        assertThat(first.time()).isEqualTo(5.0);
        assertThat(first.priority()).isEqualTo(Phase.FINISH.ordinal());
        assertThat(engine.clock().time()).isEqualTo(0.0);
    }

    @Test
    void findsTheFirstOfAClass() {
        assertThat(agenda.getFirstOfClass(Agenda.Entry.class)).hasToString("b");
        assertThat(agenda.getFirstOfClass(Agenda.Entry.class.getName())).hasToString("b");
        assertThat(agenda.getFirstOfClass("none")).isNull();
    }

    @Test
    void removesWhatItHoldsAndOnlyThat() {
        Event foreign = new Stranger(new Simulator());
        Event first = agenda.getFirst();

        assertThat(agenda.remove(foreign)).isFalse();
        assertThat(agenda.remove(first)).isTrue();
        assertThat(agenda.remove(first)).isFalse();
        assertThat(b.isScheduled()).isFalse();
        assertThat(agenda).extracting(Event::toString).containsExactly("a", "c");
    }

    @Test
    void doesNotRemoveAnEventOfAnotherRun() {
        Recorder other = new Recorder();
        other.event(Phase.FINISH, "elsewhere").at(1);

        assertThat(agenda.remove(other.engine.clock().getEventList().getFirst()))
                .isFalse();
        assertThat(agenda).hasSize(3);
    }

    @Test
    void givesTheFirstAwayOnceOnly() {
        assertThat(agenda.removeFirst()).hasToString("b");
        assertThat(agenda.removeFirst()).hasToString("a");
        assertThat(agenda.removeFirst()).hasToString("c");
        assertThat(agenda.removeFirst()).isNull();
    }

    @Test
    void letsAnEntryDoWhatItsEventDoes() {
        agenda.getFirst().actions();

        assertThat(recorder.happened).containsExactly("0 b");
    }

    @Test
    void leavesEveryEventFreeToBeScheduledWhenCleared() {
        agenda.clear();

        assertThat(agenda.isEmpty()).isTrue();
        assertThat(agenda.getFirst()).isNull();
        assertThat(agenda.removeFirst()).isNull();
        a.at(1);
        engine.runUntil(10);
        assertThat(recorder.happened).containsExactly("1 a");
    }

    @Test
    void refusesToPlaceOneEventBesideAnother() {
        Event first = agenda.getFirst();

        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> agenda.add(first));
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> agenda.addFirst(first));
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> agenda.addBefore(first, first));
        assertThatExceptionOfType(UnsupportedOperationException.class)
                .isThrownBy(() -> agenda.addAfter(first, first))
                .withMessage("Events are ordered by tick, phase and sequence only.");
    }

    private static final class Stranger extends Event {
        Stranger(Simulator simulator) {
            super(simulator);
        }

        @Override
        public void actions() {
            throw new IllegalStateException("never scheduled");
        }
    }
}
