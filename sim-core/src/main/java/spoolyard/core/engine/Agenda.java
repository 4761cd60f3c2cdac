package spoolyard.core.engine;

import java.util.Iterator;
import java.util.List;
import java.util.ListIterator;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;
import umontreal.ssj.simevents.eventlist.EventList;

/**
 * The pending events as SSJ sees an event list: views made when asked for. The order is (tick, phase, sequence) and nothing
 * else, so SSJ's ways of adding an event are refused. Where SSJ asks for null, null is the answer.
 */
final class Agenda implements EventList {
    private final EventHeap heap;
    private Simulator simulator;

    Agenda(EventHeap heap) {
        this.heap = heap;
    }

    void belongTo(Simulator owner) {
        simulator = owner;
    }

    @Override
    public boolean isEmpty() {
        return heap.size() == 0;
    }

    @Override
    public Event getFirst() {
        return inOrder().stream().findFirst().orElse(null);
    }

    @Override
    public Event removeFirst() {
        Event first = getFirst();
        if (first != null) {
            heap.takeFirst();
        }
        return first;
    }

    @Override
    public boolean remove(Event event) {
        boolean isHere = event instanceof Entry entry && heap.contains(entry.event);
        if (isHere) {
            heap.take(((Entry) event).event);
        }
        return isHere;
    }

    @Override
    public void clear() {
        while (!isEmpty()) {
            heap.takeFirst();
        }
    }

    @Override
    public Event getFirstOfClass(String className) {
        return inOrder().stream()
                .filter(event -> event.getClass().getName().equals(className))
                .findFirst()
                .orElse(null);
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

    private List<Event> inOrder() {
        return heap.inOrder()
                .<Event>map(event -> new Entry(simulator, event, heap.tickOf(event)))
                .toList();
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

    /** One pending event as SSJ sees it. Immutable. */
    static final class Entry extends Event {
        private final TimedEvent event;

        private Entry(Simulator simulator, TimedEvent event, long tick) {
            super(simulator);
            this.event = event;
            this.eventTime = tick;
            this.priority = event.phase;
        }

        @Override
        public void actions() {
            event.happen();
        }

        @Override
        public String toString() {
            return event.toString();
        }
    }
}
