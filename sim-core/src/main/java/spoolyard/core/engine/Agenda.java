package spoolyard.core.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.ListIterator;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.eventlist.EventList;

/**
 * The pending events, least (tick, phase, sequence) first: a heap of four children a node in plain arrays.
 *
 * <p>Tick and phase share one {@code long} key; the sequence is read on equal keys only. Each appointment knows its
 * place, so taking one out costs O(log n). The smallest of four children is found with the sign bits of three
 * differences instead of three branches that a processor cannot predict. Places beyond the last hold a key above all
 * others, so a node always has four children to compare.
 *
 * <p>The order is that of the events alone; SSJ's ways of placing one event beside another are refused.
 */
final class Agenda implements EventList {
    private static final int PHASE_BITS = 3;
    private static final long NO_KEY = Long.MAX_VALUE >> 1;
    private static final int CHILDREN = 4;
    private static final int FIRST_CAPACITY = 64;

    private long[] keys = new long[FIRST_CAPACITY];
    private long[] sequences = new long[FIRST_CAPACITY];
    private Appointment[] appointments = new Appointment[FIRST_CAPACITY];
    private int size;
    private long nextSequence;

    Agenda() {
        Arrays.fill(keys, NO_KEY);
    }

    /** Instant of the first event; later than any instant of a run if there is none. */
    long firstTick() {
        return keys[0] >> PHASE_BITS;
    }

    void add(Appointment appointment, long tick) {
        if (size + CHILDREN >= keys.length) {
            grow();
        }
        appointment.enterAgenda(tick);
        siftUp(size++, tick << PHASE_BITS | appointment.phase(), nextSequence++, appointment);
    }

    @Override
    public Appointment removeFirst() {
        if (size == 0) {
            return null; // as SSJ asks
        }
        Appointment first = appointments[0];
        take(first);
        return first;
    }

    @Override
    public boolean remove(Event event) {
        boolean isHere = event instanceof Appointment appointment
                && appointment.isScheduled()
                && appointments[appointment.place()] == appointment;
        if (isHere) {
            take((Appointment) event);
        }
        return isHere;
    }

    @Override
    public boolean isEmpty() {
        return size == 0;
    }

    @Override
    public void clear() {
        while (size > 0) {
            take(appointments[size - 1]);
        }
    }

    @Override
    public Appointment getFirst() {
        return appointments[0];
    }

    @Override
    public Event getFirstOfClass(String className) {
        return inOrder().stream()
                .filter(event -> event.getClass().getName().equals(className))
                .findFirst()
                .orElse(null); // as SSJ asks
    }

    @Override
    public <E extends Event> E getFirstOfClass(Class<E> type) {
        return inOrder().stream()
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst()
                .orElse(null);
    }

    @Override
    public Iterator<Event> iterator() {
        return listIterator();
    }

    @Override
    public ListIterator<Event> listIterator() {
        return inOrder().listIterator();
    }

    @Override
    public void add(Event event) {
        throw orderIsGiven();
    }

    @Override
    public void addFirst(Event event) {
        throw orderIsGiven();
    }

    @Override
    public void addBefore(Event event, Event other) {
        throw orderIsGiven();
    }

    @Override
    public void addAfter(Event event, Event other) {
        throw orderIsGiven();
    }

    private static UnsupportedOperationException orderIsGiven() {
        return new UnsupportedOperationException("Events are ordered by tick, phase and sequence only.");
    }

    private List<Event> inOrder() {
        List<Integer> places = new ArrayList<>();
        for (int place = 0; place < size; place++) {
            places.add(place);
        }
        places.sort((a, b) -> isBefore(a, keys[b], sequences[b]) ? -1 : a.equals(b) ? 0 : 1);
        List<Event> events = new ArrayList<>();
        places.forEach(place -> events.add(appointments[place]));
        return Collections.unmodifiableList(events);
    }

    private void take(Appointment appointment) {
        int hole = appointment.place();
        int last = --size;
        long key = keys[last];
        long sequence = sequences[last];
        Appointment moved = appointments[last];
        keys[last] = NO_KEY;
        appointments[last] = null;
        if (hole != last) {
            fill(hole, key, sequence, moved);
        }
        appointment.leaveAgenda();
    }

    private void fill(int hole, long key, long sequence, Appointment moved) {
        if (hole > 0 && !isBefore(parentOf(hole), key, sequence)) {
            siftUp(hole, key, sequence, moved);
        } else {
            siftDown(hole, key, sequence, moved);
        }
    }

    private void siftUp(int from, long key, long sequence, Appointment appointment) {
        int hole = from;
        while (hole > 0 && !isBefore(parentOf(hole), key, sequence)) {
            shift(parentOf(hole), hole);
            hole = parentOf(hole);
        }
        put(hole, key, sequence, appointment);
    }

    private void siftDown(int from, long key, long sequence, Appointment appointment) {
        int hole = from;
        for (int child = CHILDREN * hole + 1; child < size; child = CHILDREN * hole + 1) {
            int least = leastOfFour(child);
            if (!isBefore(least, key, sequence)) {
                break;
            }
            shift(least, hole);
            hole = least;
        }
        put(hole, key, sequence, appointment);
    }

    private int leastOfFour(int child) {
        int left = child + oneIfBefore(child + 1, child);
        int right = child + 2 + oneIfBefore(child + 3, child + 2);
        return left + (right - left) * oneIfBefore(right, left);
    }

    private int oneIfBefore(int a, int b) {
        long difference = keys[a] - keys[b];
        return (int) ((difference != 0 ? difference : sequences[a] - sequences[b]) >>> 63);
    }

    private boolean isBefore(int place, long key, long sequence) {
        return keys[place] < key || keys[place] == key && sequences[place] < sequence;
    }

    private static int parentOf(int place) {
        return (place - 1) / CHILDREN;
    }

    private void shift(int from, int to) {
        put(to, keys[from], sequences[from], appointments[from]);
    }

    private void put(int place, long key, long sequence, Appointment appointment) {
        keys[place] = key;
        sequences[place] = sequence;
        appointments[place] = appointment;
        appointment.moveInAgenda(place);
    }

    private void grow() {
        int old = keys.length;
        keys = Arrays.copyOf(keys, 2 * old);
        Arrays.fill(keys, old, 2 * old, NO_KEY);
        sequences = Arrays.copyOf(sequences, 2 * old);
        appointments = Arrays.copyOf(appointments, 2 * old);
    }
}
