package spoolyard.core.engine;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Pending events, least (tick, phase, sequence) first: a heap of four children a node in two plain arrays.
 *
 * <p>Tick and phase share one {@code long} key, kept beside the events; the sequence is read on equal keys only. Each
 * event knows its place, so taking one out costs O(log n). The least of four children is found with the sign bits of
 * three differences instead of three branches that a processor cannot predict.
 *
 * <p>When the first is taken its place stays open until the next call: most events schedule another, which then sinks
 * from the top in one go instead of one sinking and one rising.
 */
final class EventHeap {
    private static final int PHASE_BITS = 3;
    private static final long NO_KEY = Long.MAX_VALUE;
    private static final int CHILDREN = 4;
    private static final int FIRST_CAPACITY = 64;

    private long[] keys = new long[FIRST_CAPACITY];
    private TimedEvent[] events = new TimedEvent[FIRST_CAPACITY];
    private int size;
    private boolean isTopOpen;
    private long nextSequence;

    EventHeap() {
        keys[0] = NO_KEY;
    }

    int size() {
        return isTopOpen ? size - 1 : size;
    }

    /** Instant of the first event, later than any instant of a run if there is none. */
    long firstTick() {
        if (isTopOpen) {
            closeTop();
        }
        return keys[0] >> PHASE_BITS;
    }

    /** Instant of an event that is in this heap. */
    long tickOf(TimedEvent event) {
        return keys[event.place] >> PHASE_BITS;
    }

    /** Takes the first event out; there must be one. */
    TimedEvent takeFirst() {
        if (isTopOpen) {
            closeTop();
        }
        TimedEvent first = events[0];
        first.place = TimedEvent.NOWHERE;
        isTopOpen = true;
        return first;
    }

    /** Puts an event in that is in no heap. */
    void add(TimedEvent event, long tick) {
        long key = tick << PHASE_BITS | event.phase;
        event.sequence = nextSequence++;
        if (isTopOpen) {
            isTopOpen = false;
            sink(0, key, event);
        } else {
            if (size == keys.length) {
                grow();
            }
            rise(size++, key, event);
        }
    }

    /** Takes an event out, wherever it is in this heap. */
    void take(TimedEvent event) {
        if (isTopOpen) {
            closeTop();
        }
        refill(event.place);
        event.place = TimedEvent.NOWHERE;
    }

    /** Gives an event of this heap another instant and the next sequence. */
    void move(TimedEvent event, long tick) {
        if (isTopOpen) {
            closeTop();
        }
        event.sequence = nextSequence++;
        settle(event.place, tick << PHASE_BITS | event.phase, event);
    }

    boolean contains(TimedEvent event) {
        return event.isScheduled() && event.place < size && events[event.place] == event;
    }

    /** All events in the order in which they will happen. Cost: O(n log n). */
    Stream<TimedEvent> inOrder() {
        if (isTopOpen) {
            closeTop();
        }
        return IntStream.range(0, size)
                .boxed()
                .sorted((a, b) -> a.equals(b) ? 0 : isBefore(a, keys[b], events[b]) ? -1 : 1)
                .map(place -> events[place]);
    }

    private void closeTop() {
        isTopOpen = false;
        refill(0);
    }

    /** Fills a hole with the last event. */
    private void refill(int hole) {
        int last = --size;
        long key = keys[last];
        TimedEvent event = events[last];
        keys[last] = NO_KEY;
        events[last] = null;
        if (hole != last) {
            settle(hole, key, event);
        }
    }

    /** Moves an event from a place that is free for it to where it belongs. */
    private void settle(int hole, long key, TimedEvent event) {
        if (hole > 0 && !isBefore(parentOf(hole), key, event)) {
            rise(hole, key, event);
        } else {
            sink(hole, key, event);
        }
    }

    private void rise(int from, long key, TimedEvent event) {
        int hole = from;
        while (hole > 0) {
            int parent = parentOf(hole);
            if (isBefore(parent, key, event)) {
                break;
            }
            put(hole, keys[parent], events[parent]);
            hole = parent;
        }
        put(hole, key, event);
    }

    private void sink(int from, long key, TimedEvent event) {
        int hole = from;
        for (int child = CHILDREN * hole + 1; child < size; child = CHILDREN * hole + 1) {
            int least = child + CHILDREN <= size ? leastOfFour(child) : leastOfFew(child);
            if (!isBefore(least, key, event)) {
                break;
            }
            put(hole, keys[least], events[least]);
            hole = least;
        }
        put(hole, key, event);
    }

    private int leastOfFour(int child) {
        int left = child + oneIfBefore(child + 1, child);
        int right = child + 2 + oneIfBefore(child + 3, child + 2);
        return left + (right - left & -oneIfBefore(right, left));
    }

    /** Of one, two or three; written out, for the compiler unrolls a loop here into far more code. */
    private int leastOfFew(int child) {
        int least = child;
        if (child + 1 < size) {
            least += oneIfBefore(child + 1, least);
        }
        if (child + 2 < size) {
            least += child + 2 - least & -oneIfBefore(child + 2, least);
        }
        return least;
    }

    private int oneIfBefore(int a, int b) {
        long difference = keys[a] - keys[b];
        return (int) ((difference != 0 ? difference : events[a].sequence - events[b].sequence) >>> 63);
    }

    private boolean isBefore(int place, long key, TimedEvent event) {
        long other = keys[place];
        return other < key || other == key && events[place].sequence < event.sequence;
    }

    private static int parentOf(int place) {
        return (place - 1) >>> 2;
    }

    private void put(int place, long key, TimedEvent event) {
        keys[place] = key;
        events[place] = event;
        event.place = place;
    }

    private void grow() {
        keys = Arrays.copyOf(keys, 2 * size);
        events = Arrays.copyOf(events, 2 * size);
    }
}
