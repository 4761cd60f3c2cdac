package spoolyard.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The engine against a list that is sorted anew before each event, on random programmes full of ties. */
final class EventOrderProperties {
    private static final long END = 60;

    @Property(tries = 600, seed = "20261101")
    void happensInTheOrderOfTheSortedList(@ForAll("programmes") Programme programme) {
        List<String> expected = new SortedListOracle(SortedListOracle.BY_TICK_PHASE_SEQUENCE).run(programme, END);

        assertThat(new Interpreter().run(programme, END)).isEqualTo(expected);
    }

    @Property(tries = 200, seed = "20261102")
    void happensInTheSameOrderWhenTheRunIsCutInPieces(@ForAll("programmes") Programme programme) {
        List<String> whole = new Interpreter().run(programme, END);

        assertThat(new Interpreter().run(programme, 0, 1, 7, 7, 30, END)).isEqualTo(whole);
    }

    @Property(tries = 200, seed = "20261103")
    void neverTurnsTheClockBack(@ForAll("programmes") Programme programme) {
        Interpreter interpreter = new Interpreter();
        List<Long> instants = new ArrayList<>();
        interpreter.engine.afterEach(() -> instants.add(interpreter.engine.now()));

        interpreter.run(programme, END);

        assertThat(instants).isSorted().hasSize((int) interpreter.engine.executed());
    }

    @Property(tries = 1, seed = "20261104")
    void theComparisonFindsAnOrderWithoutPhases() {
        Comparator<SortedListOracle.Pending> defect = Comparator.comparingLong(SortedListOracle.Pending::tick)
                .thenComparingLong(SortedListOracle.Pending::sequence);

        assertThat(numberOfDifferingTraces(defect)).isPositive();
    }

    @Property(tries = 1, seed = "20261104")
    void theComparisonFindsAnOrderThatServesTheLastScheduledFirst() {
        Comparator<SortedListOracle.Pending> defect = Comparator.comparingLong(SortedListOracle.Pending::tick)
                .thenComparing(pending -> Programme.phaseOf(pending.event()))
                .thenComparing(Comparator.comparingLong(SortedListOracle.Pending::sequence)
                        .reversed());

        assertThat(numberOfDifferingTraces(defect)).isPositive();
    }

    private long numberOfDifferingTraces(Comparator<SortedListOracle.Pending> defect) {
        return programmes()
                .sampleStream()
                .limit(50)
                .filter(programme ->
                        !new SortedListOracle(defect).run(programme, END).equals(new Interpreter().run(programme, END)))
                .count();
    }

    @Provide
    Arbitrary<Programme> programmes() {
        Arbitrary<Programme.Step> steps = Combinators.combine(
                        Arbitraries.of(Programme.Kind.class),
                        Arbitraries.integers().between(0, Programme.EVENTS - 1).withoutEdgeCases(),
                        Arbitraries.longs().between(0, 12).withoutEdgeCases())
                .as(Programme.Step::new);
        return Combinators.combine(
                        steps.list().ofMinSize(1).ofMaxSize(300),
                        steps.list().ofMaxSize(400),
                        Arbitraries.integers().between(1, 4))
                .as(Programme::new);
    }

    /** Runs a programme on the engine. */
    private static final class Interpreter {
        private final Engine engine = new Engine();
        private final List<TimedEvent> events = new ArrayList<>();
        private final List<String> trace = new ArrayList<>();
        private Deque<Programme.Step> during = new ArrayDeque<>();
        private int stepsPerEvent;

        Interpreter() {
            for (int i = 0; i < Programme.EVENTS; i++) {
                events.add(new Numbered(i));
            }
        }

        List<String> run(Programme programme, long... ends) {
            during = new ArrayDeque<>(programme.during());
            stepsPerEvent = programme.stepsPerEvent();
            programme.before().forEach(this::take);
            for (long end : ends) {
                engine.runUntil(end);
            }
            return trace;
        }

        private void take(Programme.Step step) {
            TimedEvent event = events.get(step.event());
            switch (step.kind()) {
                case SCHEDULE_IF_FREE -> {
                    if (!event.isScheduled()) {
                        event.in(step.delay());
                    }
                }
                case MOVE -> event.moveTo(engine.now() + step.delay());
                case CANCEL -> event.cancel();
            }
        }

        private final class Numbered extends TimedEvent {
            private final int number;

            Numbered(int number) {
                super(engine, Programme.phaseOf(number));
                this.number = number;
            }

            @Override
            protected void happen() {
                trace.add(engine.now() + " " + number);
                for (int i = 0; i < stepsPerEvent && !during.isEmpty(); i++) {
                    take(during.remove());
                }
            }
        }
    }
}
