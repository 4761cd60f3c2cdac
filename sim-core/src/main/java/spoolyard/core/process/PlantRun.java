package spoolyard.core.process;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import spoolyard.core.engine.Engine;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;
import spoolyard.core.policy.PurgeTable;
import spoolyard.core.random.InverseTables;
import spoolyard.core.random.Streams;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.SwapLog;

/**
 * One replication of a plant: one object, one thread, used once. The same plant, seed and replication give bit-identical
 * results.
 *
 * <p>Example: {@code RunResult result = new PlantRun(plant, 1, 0, EventLog.SILENT).run();}
 */
public final class PlantRun {
    private final long masterSeed;
    private final int replication;
    private final World world;
    private final CrewDesk desk;
    private final OrderDesk orders;
    private final Stores stores;
    private final SpoolFlow flow;
    private final SpoolRoute route;
    private final List<LineProcess> lines = new ArrayList<>();
    private final List<InboundProcess> inbound = new ArrayList<>();
    private final List<ShiftRun> shifts = new ArrayList<>();
    private final Map<String, List<CrewLedger>> crewByShift = new LinkedHashMap<>();

    /**
     * Prepares a run.
     *
     * @param plant the plant
     * @param masterSeed seed of the experiment, any value
     * @param replication number of the replication, {@code >= 0}
     * @param log where to tell events, {@link EventLog#SILENT} for nowhere
     */
    public PlantRun(Plant plant, long masterSeed, int replication, EventLog log) {
        this(plant, PlantLaws.tables(plant), masterSeed, replication, log);
    }

    /**
     * Prepares one of many runs of a plant.
     *
     * @param plant the plant
     * @param tables from {@link PlantLaws#tables(Plant)}, shared by all runs of the plant
     * @param masterSeed seed of the experiment, any value
     * @param replication number of the replication, {@code >= 0}
     * @param log where to tell events, {@link EventLog#SILENT} for nowhere
     */
    public PlantRun(Plant plant, InverseTables tables, long masterSeed, int replication, EventLog log) {
        this(plant, tables, masterSeed, replication, log, SwapLog.SILENT);
    }

    /**
     * Prepares one of many runs of a plant, which also tells its spool changes.
     *
     * @param plant the plant
     * @param tables from {@link PlantLaws#tables(Plant)}, shared by all runs of the plant
     * @param masterSeed seed of the experiment, any value
     * @param replication number of the replication, {@code >= 0}
     * @param log where to tell events, {@link EventLog#SILENT} for nowhere
     * @param swaps where to tell spool changes, {@link SwapLog#SILENT} for nowhere
     */
    public PlantRun(Plant plant, InverseTables tables, long masterSeed, int replication, EventLog log, SwapLog swaps) {
        this.masterSeed = masterSeed;
        this.replication = replication;
        this.world = new World(plant, new Engine(), new Streams(masterSeed, replication, tables), log, swaps);
        this.desk = new CrewDesk(
                world.engine(),
                plant.crew(),
                plant.lines().stream().map(Line::name).toList(),
                world.active(),
                log);
        PurgeTable purges = new PurgeTable(plant.changeovers());
        this.orders = new OrderDesk(world, purges);
        this.stores = new Stores(world);
        this.flow = new SpoolFlow(world, orders.orders());
        Losses losses = new Losses(world, flow, orders, lines, stores);
        this.route = new SpoolRoute(world, desk, flow, losses, stores);
        SharedDryers dryers = new SharedDryers(plant.drying());
        Floor floor = new Floor(desk, route.entry(), orders, purges, flow, losses, dryers, stores);
        for (Line line : plant.lines()) {
            lines.add(new LineProcess(world, line, lines.size(), floor));
        }
        for (Finishing.Inbound source : plant.finishing().inbound()) {
            inbound.add(new InboundProcess(world, source, floor.rack(), flow));
        }
        plant.shifts().forEach(this::addShift);
    }

    private void addShift(Shift shift) {
        List<CrewLedger> ledgers = crewByShift.computeIfAbsent(
                shift.name(),
                name -> desk.roles().stream().map(role -> new CrewLedger()).toList());
        shifts.add(new ShiftRun(shift, desk, ledgers, () -> LineTotals.of(lines)));
    }

    /**
     * Runs to the horizon.
     *
     * @return the results
     * @throws IllegalStateException if an invariant of the model is broken; the message names entity and time
     */
    public RunResult run() {
        long horizon = world.plant().horizonTicks();
        start();
        world.engine().runUntil(horizon);
        desk.close();
        RunResult result = result();
        lines.forEach(line -> line.strands().forEach(Strand::tellChange));
        return result;
    }

    /** Puts everything that is known beforehand on the calendar. */
    void start() {
        long horizon = world.plant().horizonTicks();
        shifts.forEach(shift -> shift.schedule(horizon));
        route.schedule(horizon);
        lines.forEach(line -> new LineSchedule(world, line).schedule());
        orders.scheduleReleases(lines, horizon);
        inbound.forEach(InboundProcess::start);
        stores.start(lines, route::cartonsCame);
        new OpeningRacks(world, route, flow, orders).fill();
    }

    Engine engine() {
        return world.engine();
    }

    CrewDesk desk() {
        return desk;
    }

    List<LineProcess> lines() {
        return lines;
    }

    List<StationProcess> stations() {
        return route.stations();
    }

    Stores stores() {
        return stores;
    }

    SpoolRoute route() {
        return route;
    }

    SpoolFlow flow() {
        return flow;
    }

    private RunResult result() {
        return new RunResult(
                masterSeed,
                replication,
                world.plant().horizonTicks(),
                world.engine().executed(),
                lines.stream().map(LineReport::of).toList(),
                shifts.stream().filter(ShiftRun::isOver).map(ShiftRun::result).toList(),
                orders.orders().stream().map(OrderRun::result).toList(),
                lines.stream().flatMap(line -> line.changeovers().stream()).toList(),
                crewResults(),
                route.stations().stream().map(StationProcess::result).toList(),
                inbound.stream().map(InboundProcess::result).toList(),
                flow.result(route.waiting(), route.inWork()),
                route.quality(lines.stream()
                        .map(line -> line.colour().result())
                        .flatMap(Optional::stream)
                        .toList()),
                stores.results(),
                stores.regrindResults(),
                world.active().close(world.plant().horizonTicks()));
    }

    private List<RunResult.CrewResult> crewResults() {
        return IntStream.range(0, desk.roles().size())
                .boxed()
                .flatMap(role -> crewByShift.entrySet().stream().map(entry -> entry.getValue()
                        .get(role)
                        .result(desk.roles().get(role).name(), entry.getKey())))
                .toList();
    }
}
