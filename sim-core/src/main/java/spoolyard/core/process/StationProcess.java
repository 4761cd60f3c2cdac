package spoolyard.core.process;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Uniforms;
import spoolyard.core.random.Variate;
import spoolyard.core.record.ServerState;
import spoolyard.core.record.StationResult;

/** A finishing station as it runs: its rack, its work places, and where its spools go next. */
final class StationProcess {
    private static final int NONE = -1;

    private final World world;
    private final FinishingStation description;
    private final Rack rack;
    private final List<Server> servers = new ArrayList<>();
    private final List<Variate> cycleTimes = new ArrayList<>();
    private final Uniforms repeat;
    private final int activity;
    private final boolean isLab;
    private Consumer<Server> onward;
    private SealingGate gate = SealingGate.OPEN;
    private int activePlaces;
    private Optional<CartonDesk> cartons = Optional.empty();
    private boolean open;
    private long spools;
    private long repeats;
    private long begun;
    private long waited;
    private long waitTicks;
    private long longestWaitTicks;

    StationProcess(World world, CrewDesk desk, FinishingStation description) {
        this(world, desk, description, StationSort.FLOW, new Rack(world, description.waitingPlaces()));
    }

    StationProcess(World world, CrewDesk desk, FinishingStation description, StationSort sort, Rack rack) {
        this.world = world;
        this.description = description;
        this.rack = rack;
        String name = sort.label() + " " + description.name();
        for (FinishingStation.Cycle cycle : description.cycles()) {
            cycleTimes.add(
                    world.streams().variate(cycle.timeS(), name + " / cycle up to " + cycle.upToSpoolKg() + " kg"));
        }
        this.repeat = world.streams().uniforms(name + " / repeat");
        for (int number = 1; number <= description.servers(); number++) {
            servers.add(new Server(world, desk, this, name + " / place " + number));
        }
        this.isLab = sort == StationSort.LAB;
        this.activity = sort.kind()
                .map(kind -> world.active().add(kind, description.name()))
                .orElse(NONE);
        rack.whenSpoolArrives(spool -> offerWork());
    }

    /** Where finished batches go. */
    void sendTo(Consumer<Server> next) {
        onward = next;
    }

    /** What looks at spools when it is their turn. */
    void guardBy(SealingGate guard) {
        gate = guard;
    }

    /** Spools are packed into cartons that may run out. */
    void packInto(CartonDesk itsCartons) {
        cartons = Optional.of(itsCartons);
    }

    /** There are more cartons. */
    void cartonsCame() {
        offerWork();
        servers.forEach(Server::show);
    }

    void schedule(long horizon) {
        for (Window window : description.open()) {
            if (window.endTick() > 0 && window.startTick() < horizon) {
                opening(true).at(Math.max(0, window.startTick()));
                opening(false).at(Math.min(horizon, window.endTick()));
            }
        }
    }

    private TimedEvent opening(boolean opens) {
        return new TimedEvent(world.engine(), Phase.CALENDAR) {
            @Override
            protected void happen() {
                open = opens;
                servers.forEach(Server::openingChanged);
                offerWork();
            }

            @Override
            public String toString() {
                return "station " + description.name() + (opens ? " opens" : " closes");
            }
        };
    }

    FinishingStation description() {
        return description;
    }

    Rack rack() {
        return rack;
    }

    boolean isOpen() {
        return open;
    }

    List<Server> servers() {
        return servers;
    }

    /** Gives waiting spools to idle places, in the order of the places. */
    void offerWork() {
        for (int i = 0; i < servers.size() && rack.size() > 0; i++) {
            boolean hasWork = !servers.get(i).isFree() || hasWork();
            if (hasWork && rack.size() > claimedByCalls()) {
                servers.get(i).offer();
            }
        }
        if (lacksCartons()) {
            servers.forEach(Server::show);
        }
        if (isLab) {
            showActivity();
        }
    }

    /** A place goes from one state to another. */
    void placeTurns(ServerState from, ServerState to) {
        int before = activePlaces;
        activePlaces += (to.isActive() ? 1 : 0) - (from.isActive() ? 1 : 0);
        if (activity != NONE && (activePlaces != before || isLab)) {
            showActivity();
        }
    }

    /** Whether spools wait, none of which there is a carton for. */
    boolean lacksCartons() {
        return rack.size() > 0
                && cartons.filter(desk -> rack.holdsNone(desk::hasFor)).isPresent();
    }

    /** Brings the first spool that there is a carton for to the head of the rack; false if there is none. */
    private boolean hasCarton() {
        return cartons.isEmpty() || rack.bringForward(cartons.get()::hasFor);
    }

    /** Takes down whether all places are active; a test of the lab counts only while a further lot waits for it. */
    private void showActivity() {
        boolean isActive = activePlaces == servers.size() && (!isLab || rack.size() > 0);
        world.active().set(activity, isActive, world.now());
    }

    /** Whether spools wait, once the gate has turned away those at the head that must not go in. */
    boolean hasWork() {
        while (rack.size() > 0 && gate.refuses(rack.first())) {
            gate.turnAway(rack.take());
            rack.grant();
        }
        return rack.size() > 0 && hasCarton();
    }

    /** Whether spools wait that a free place could take. */
    boolean isIdleBesideWork() {
        return rack.size() > 0
                && rack.size() > claimedByCalls()
                && !lacksCartons()
                && servers.stream().anyMatch(Server::isFree);
    }

    private int claimedByCalls() {
        int claimed = 0;
        for (int i = 0; i < servers.size(); i++) {
            if (servers.get(i).isCalling()) {
                claimed += batchOf(rack.first());
            }
        }
        return claimed;
    }

    private int batchOf(Spool spool) {
        return description.cycles().get(cycleFor(spool)).batch();
    }

    /** Which cycle a spool needs. */
    int cycleFor(Spool spool) {
        List<FinishingStation.Cycle> cycles = description.cycles();
        int i = 0;
        while (i < cycles.size() - 1 && spool.sizeKg > cycles.get(i).upToSpoolKg()) {
            i++;
        }
        return i;
    }

    /** Moves the next batch from the rack into a work place: spools of one cycle, as many as are there and fit. */
    void takeBatch(List<Spool> into) {
        int cycle = cycleFor(rack.first());
        int batch = batchOf(rack.first());
        while (into.size() < batch && hasNext(cycle)) {
            Spool spool = rack.take();
            gate.admitted(spool);
            cartons.ifPresent(desk -> desk.admitted(spool));
            long span = world.now() - spool.rackedTick;
            begun++;
            waited += span > 0 ? 1 : 0;
            waitTicks += span;
            longestWaitTicks = Math.max(longestWaitTicks, span);
            into.add(spool);
        }
    }

    private boolean hasNext(int cycle) {
        return rack.size() > 0
                && cycleFor(rack.first()) == cycle
                && !gate.refuses(rack.first())
                && cartons.filter(desk -> !desk.hasFor(rack.first())).isEmpty();
    }

    long drawCycleTicks(Spool first) {
        Variate cycle = cycleTimes.get(cycleFor(first));
        long ticks = 0;
        for (int round = 0; round < first.rounds; round++) {
            ticks += cycle.nextTicks();
        }
        return ticks;
    }

    boolean mustRepeat() {
        boolean again = description.repeatProbability() > 0 && repeat.next() < description.repeatProbability();
        repeats += again ? 1 : 0;
        return again;
    }

    void batchDone(Server server) {
        spools += server.batch().size();
        onward.accept(server);
    }

    int inWork() {
        return servers.stream().mapToInt(server -> server.batch().size()).sum();
    }

    StationResult result() {
        Map<ServerState, Double> seconds = new EnumMap<>(ServerState.class);
        Arrays.stream(ServerState.values()).forEach(state -> seconds.put(state, 0.0));
        for (Server server : servers) {
            server.states().close(world.now());
            server.states().seconds().forEach((state, s) -> seconds.merge(state, s, Double::sum));
        }
        return new StationResult(
                description.name(),
                servers.size(),
                seconds,
                spools,
                repeats,
                begun == 0 ? 0 : Ticks.toSeconds(waitTicks) / begun,
                Ticks.toSeconds(longestWaitTicks),
                rack.meanSize(),
                rack.peak(),
                begun == 0 ? 0 : waited / (double) begun);
    }
}
