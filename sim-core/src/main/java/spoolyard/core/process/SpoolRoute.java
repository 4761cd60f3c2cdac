package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import spoolyard.core.plant.Exposure;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.StockItem;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.record.QualityResult;
import spoolyard.core.record.QualityResult.ApprovalResult;
import spoolyard.core.record.StationResult;

/** The way of a spool from winder or gate to pallet: stations, quarantine, lab and rework, and how they are connected. */
final class SpoolRoute {
    private final World world;
    private final CrewDesk desk;
    private final SpoolFlow flow;
    private final Losses losses;
    private final QualityRules rules;
    private final int holdAt;
    private final int sealAt;
    private final Rework rework;
    private final List<StationProcess> stations = new ArrayList<>();
    private Optional<Rack> quarantine = Optional.empty();
    private Optional<Quarantine> hold = Optional.empty();
    private Optional<LabProcess> lab = Optional.empty();
    private Optional<ExposureGate> gate = Optional.empty();

    SpoolRoute(World world, CrewDesk desk, SpoolFlow flow, Losses losses, Stores stores) {
        this.world = world;
        this.desk = desk;
        this.flow = flow;
        this.losses = losses;
        Finishing finishing = world.plant().finishing();
        this.rules = finishing.quality();
        this.sealAt = rules.exposure().isPresent() ? finishing.firstOf(TaskKind.SEALING) : -1;
        this.holdAt = rules.lab()
                .map(l -> finishing.firstOf(l.hold() == Lab.Hold.BEFORE_SEALING ? TaskKind.SEALING : TaskKind.PACKING))
                .orElse(-1);
        this.rework = new Rework(world, desk, rules);
        for (FinishingStation description : finishing.stations()) {
            stations.add(new StationProcess(world, desk, description, StationSort.FLOW, rackOf(description)));
        }
        rules.lab().ifPresent(this::buildLab);
        rules.exposure().ifPresent(this::buildGate);
        connect();
        boolean areLimited =
                stores.stocks().stream().anyMatch(stock -> stock.item().kind() == StockItem.Kind.CARTONS);
        if (areLimited) {
            packing().ifPresent(station -> station.packInto(new CartonDesk(stores, world.plant())));
        }
    }

    private Optional<StationProcess> packing() {
        int place = world.plant().finishing().firstOf(TaskKind.PACKING);
        return place < 0 ? Optional.empty() : Optional.of(stations.get(place));
    }

    /** There are more cartons. */
    void cartonsCame() {
        packing().ifPresent(StationProcess::cartonsCame);
    }

    private Rack rackOf(FinishingStation description) {
        boolean isByClock = rules.exposure()
                        .filter(exposure -> exposure.order() == Exposure.Order.TIGHTEST_CLOCK_FIRST)
                        .isPresent()
                && stations.size() == sealAt;
        return isByClock
                ? Rack.byClock(world, description.waitingPlaces())
                : new Rack(world, description.waitingPlaces());
    }

    private void buildLab(Lab description) {
        Rack held = Rack.ofAnyOrder(world, description.quarantinePlaces());
        Rack next = stations.get(holdAt).rack();
        Refusals refusals = new Refusals(world, held, next, losses, rework);
        LabProcess process = new LabProcess(world, desk, description, refusals);
        hold = Optional.of(new Quarantine(world, description, held, process::take, refusals::release));
        quarantine = Optional.of(held);
        lab = Optional.of(process);
        rework.sorting().sendTo(server -> {
            refusals.sorted(server.batch());
            new Transfer(next, server).start();
        });
        Rack toSeal = stations.get(firstSealing()).rack();
        rework.respooling().sendTo(server -> {
            refusals.respooled(server.batch());
            new Transfer(toSeal, server).start();
        });
    }

    /** Where spools that were wound anew go: they are out of their bags. */
    private int firstSealing() {
        int sealing = world.plant().finishing().firstOf(TaskKind.SEALING);
        return sealing >= 0 && sealing < holdAt ? sealing : holdAt;
    }

    private void buildGate(Exposure exposure) {
        StationProcess sealing = stations.get(sealAt);
        ExposureGate guard = new ExposureGate(world, exposure, losses, rework.oven());
        sealing.guardBy(guard);
        rework.oven().sendTo(server -> {
            guard.dried(server.batch());
            new Transfer(sealing.rack(), server).start();
        });
        gate = Optional.of(guard);
    }

    private void connect() {
        for (int i = 0; i < stations.size(); i++) {
            stations.get(i).sendTo(i + 1 < stations.size() ? toRack(entrance(i + 1)) : this::toPallet);
        }
    }

    private static Consumer<Server> toRack(Rack rack) {
        return server -> new Transfer(rack, server).start();
    }

    private void toPallet(Server server) {
        server.batch().forEach(flow::packed);
        server.batch().clear();
        server.batchGone();
    }

    private Rack entrance(int station) {
        return quarantine.filter(rack -> station == holdAt).orElseGet(() -> stations.get(station)
                .rack());
    }

    /** Where full spools from winder and gate go. */
    Rack entry() {
        return entrance(0);
    }

    /** The stations that every spool meets, in this order. */
    List<StationProcess> stations() {
        return stations;
    }

    /** The station of a name. */
    StationProcess station(String name) {
        return stations.stream()
                .filter(station -> station.description().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no station " + name));
    }

    /** Whether spools in the rack of a station are still to come into quarantine. */
    boolean isBeforeQuarantine(StationProcess station) {
        return stations.indexOf(station) < holdAt;
    }

    /** The tests of the lab. */
    List<StationProcess> tests() {
        return lab.map(LabProcess::tests).orElse(List.of());
    }

    /** All stations that hold or work on spools. */
    List<StationProcess> spoolStations() {
        return Stream.concat(stations.stream(), rework.used().stream()).toList();
    }

    /** Spools are held here; empty if there is no lab. */
    Optional<Rack> quarantine() {
        return quarantine;
    }

    /** Spools in quarantine whose lot is not complete. */
    int heldOfOpenLots() {
        return hold.map(Quarantine::openSpools).orElse(0);
    }

    /** Spools lost so far. */
    List<QualityResult.LossResult> losses() {
        return losses.results();
    }

    void schedule(long horizon) {
        Stream.concat(spoolStations().stream(), tests().stream()).forEach(station -> station.schedule(horizon));
    }

    long waiting() {
        return quarantine.map(SpoolRoute::standing).orElse(0L)
                + spoolStations().stream()
                        .mapToLong(station -> standing(station.rack()))
                        .sum();
    }

    private static long standing(Rack rack) {
        return rack.size() + rack.held();
    }

    long inWork() {
        return spoolStations().stream().mapToLong(StationProcess::inWork).sum();
    }

    QualityResult quality(List<ApprovalResult> approvals) {
        return new QualityResult(
                results(tests()),
                results(rework.used()),
                lab.map(LabProcess::lots).orElse(List.of()),
                gate.map(ExposureGate::results).orElse(List.of()),
                losses.results(),
                approvals);
    }

    private static List<StationResult> results(List<StationProcess> some) {
        return some.stream().map(StationProcess::result).toList();
    }
}
