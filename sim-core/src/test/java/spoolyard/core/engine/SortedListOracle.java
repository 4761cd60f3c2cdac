package spoolyard.core.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/** The slowest and plainest event list: sorts everything before each event. */
final class SortedListOracle {
    static final Comparator<Pending> BY_TICK_PHASE_SEQUENCE = Comparator.comparingLong(Pending::tick)
            .thenComparing(pending -> Programme.phaseOf(pending.event()))
            .thenComparingLong(Pending::sequence);

    private final Comparator<Pending> order;
    private final List<Pending> pending = new ArrayList<>();
    private final List<String> trace = new ArrayList<>();
    private long now;
    private long sequence;

    record Pending(int event, long tick, long sequence) {}

    SortedListOracle(Comparator<Pending> order) {
        this.order = order;
    }

    List<String> run(Programme programme, long endTick) {
        programme.before().forEach(this::take);
        Deque<Programme.Step> during = new ArrayDeque<>(programme.during());
        pending.sort(order);
        while (!pending.isEmpty() && pending.get(0).tick() <= endTick) {
            Pending next = pending.remove(0);
            now = next.tick();
            trace.add(now + " " + next.event());
            for (int i = 0; i < programme.stepsPerEvent() && !during.isEmpty(); i++) {
                take(during.remove());
            }
            pending.sort(order);
        }
        return trace;
    }

    private void take(Programme.Step step) {
        boolean isFree = pending.stream().noneMatch(p -> p.event() == step.event());
        if (step.kind() == Programme.Kind.SCHEDULE_IF_FREE && !isFree) {
            return;
        }
        pending.removeIf(p -> p.event() == step.event());
        if (step.kind() != Programme.Kind.CANCEL) {
            pending.add(new Pending(step.event(), now + step.delay(), sequence++));
        }
    }
}
