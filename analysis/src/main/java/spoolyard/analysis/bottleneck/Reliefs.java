package spoolyard.analysis.bottleneck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.Exposure;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.Shift;

/**
 * Everything in a plant that can be relieved by itself: one person, place, dryer or oven more, a quarter more room, a
 * fifth less time, a tenth more rate. What is not there, or has no limit, is left out. A new kind of relief is a new line in
 * {@link #of}.
 */
public final class Reliefs {
    private static final double MORE_ROOM = 1.25;
    private static final double LESS_TIME = 0.8;
    private static final double MORE_RATE = 1.1;

    private final Plant plant;
    private final Changed changed;
    private final List<Relief> all = new ArrayList<>();

    private Reliefs(Plant plant) {
        this.plant = plant;
        this.changed = new Changed(plant);
    }

    /**
     * All reliefs of a plant.
     *
     * @param plant the plant
     * @param isByShift true: a person more in each shift name by itself; false: in all shifts together
     * @return crew first, then lines, stations, lab, dryers
     */
    public static List<Relief> of(Plant plant, boolean isByShift) {
        Reliefs reliefs = new Reliefs(plant);
        reliefs.crew(isByShift);
        for (int i = 0; i < plant.lines().size(); i++) {
            reliefs.line(i);
        }
        for (int i = 0; i < plant.finishing().stations().size(); i++) {
            reliefs.station(i);
        }
        reliefs.lab();
        reliefs.dryers();
        reliefs.ovens();
        return reliefs.all;
    }

    private void add(Relief.Kind kind, String station, String change, Plant relieved) {
        all.add(new Relief(kind, station, change, relieved));
    }

    // ------------------------------------------------------------------ crew

    private void crew(boolean isByShift) {
        for (int role = 0; role < plant.crew().roles().size(); role++) {
            int index = role;
            List<String> names = plant.shifts().stream()
                    .filter(shift -> shift.heads().get(index) > 0)
                    .map(Shift::name)
                    .distinct()
                    .toList();
            if (names.isEmpty()) {
                continue;
            }
            if (isByShift) {
                names.forEach(name -> person(index, "one more in shift " + name, List.of(name)));
            } else {
                person(index, "one more in " + (names.size() == 1 ? "shift " + names.get(0) : "each shift"), names);
            }
        }
    }

    private void person(int role, String change, List<String> shifts) {
        add(
                Relief.Kind.CREW,
                plant.crew().roles().get(role).name(),
                change,
                changed.shifts(shift -> shifts.contains(shift.name()) ? withOneMore(shift, role) : shift));
    }

    private static Shift withOneMore(Shift shift, int role) {
        List<Integer> heads = new ArrayList<>(shift.heads());
        heads.set(role, heads.get(role) + (heads.get(role) > 0 ? 1 : 0));
        return new Shift(
                shift.name(),
                shift.startTick(),
                shift.endTick(),
                heads,
                shift.breaks(),
                shift.handOverTicks(),
                shift.handOverOverlaps(),
                shift.pace(),
                shift.payFactor());
    }

    // ------------------------------------------------------------------ lines

    private void line(int index) {
        Line line = plant.lines().get(index);
        add(
                Relief.Kind.LINE,
                line.name(),
                "10 % faster, winder and all",
                changed.line(index, each -> Changed.faster(each, MORE_RATE)));
        if (line.accumulator().roomM() > 0) {
            add(
                    Relief.Kind.BUFFER,
                    line.name(),
                    "accumulator +25 %",
                    changed.line(index, each -> Changed.withRoom(each, MORE_ROOM)));
        }
        add(
                Relief.Kind.SWAP,
                line.name(),
                "spool swaps 20 % quicker",
                changed.line(index, each -> Changed.withSwaps(each, LESS_TIME)));
        if (line.supply().isPresent()) {
            add(
                    Relief.Kind.DRYER,
                    line.name(),
                    "dryer hopper +25 %",
                    changed.line(index, each -> Changed.withHopper(each, MORE_ROOM)));
        }
    }

    // ------------------------------------------------------------------ finishing

    private void station(int index) {
        FinishingStation station = plant.finishing().stations().get(index);
        add(
                Relief.Kind.FINISHING,
                station.name(),
                "one more place",
                changed.station(index, each -> with(each, each.servers() + 1, each.cycles(), each.waitingPlaces())));
        List<FinishingStation.Cycle> quicker = station.cycles().stream()
                .map(cycle -> new FinishingStation.Cycle(
                        cycle.upToSpoolKg(), cycle.batch(), cycle.timeS().times(LESS_TIME)))
                .toList();
        add(
                Relief.Kind.FINISHING,
                station.name(),
                "cycle 20 % shorter",
                changed.station(index, each -> with(each, each.servers(), quicker, each.waitingPlaces())));
        if (station.waitingPlaces() < Integer.MAX_VALUE && station.waitingPlaces() > 0) {
            add(
                    Relief.Kind.RACK,
                    station.name(),
                    "room before it +25 %",
                    changed.station(
                            index, each -> with(each, each.servers(), each.cycles(), more(each.waitingPlaces()))));
        }
    }

    private static int more(int places) {
        return (int) Math.min(Integer.MAX_VALUE, Math.max(places + 1L, Math.round(MORE_ROOM * places)));
    }

    private static FinishingStation with(
            FinishingStation old, int servers, List<FinishingStation.Cycle> cycles, int waitingPlaces) {
        return new FinishingStation(
                old.name(),
                old.kind(),
                servers,
                cycles,
                old.crew(),
                old.open(),
                waitingPlaces,
                old.repeatProbability(),
                old.stoppages(),
                old.place());
    }

    // ------------------------------------------------------------------ lab, drying

    private void lab() {
        QualityRules rules = plant.finishing().quality();
        rules.lab().ifPresent(lab -> {
            if (lab.quarantinePlaces() < Integer.MAX_VALUE) {
                add(
                        Relief.Kind.RACK,
                        "quarantine",
                        "room +25 %",
                        changed.quality(new QualityRules(
                                Optional.of(with(lab, more(lab.quarantinePlaces()), lab.tests())), rules.exposure())));
            }
            for (int i = 0; i < lab.tests().size(); i++) {
                int relieved = i;
                List<Lab.Test> tests = IntStream.range(0, lab.tests().size())
                        .mapToObj(at -> at == relieved
                                ? withPlace(lab.tests().get(at))
                                : lab.tests().get(at))
                        .toList();
                add(
                        Relief.Kind.LAB,
                        lab.tests().get(i).name(),
                        "one more place",
                        changed.quality(new QualityRules(
                                Optional.of(with(lab, lab.quarantinePlaces(), tests)), rules.exposure())));
            }
        });
    }

    private static Lab.Test withPlace(Lab.Test test) {
        return new Lab.Test(
                test.name(),
                test.places() + 1,
                test.batch(),
                test.takesS(),
                test.crew(),
                test.shareOfLots(),
                test.isForEachSampledSpool(),
                test.isHolding());
    }

    private static Lab with(Lab old, int quarantinePlaces, List<Lab.Test> tests) {
        return new Lab(
                old.hold(),
                quarantinePlaces,
                old.lotSpools(),
                old.lotWithinS(),
                old.quality(),
                old.sampling(),
                tests,
                old.refusal(),
                old.place());
    }

    private void dryers() {
        DryingRoom room = plant.drying();
        boolean isUsed = plant.lines().stream().anyMatch(line -> line.supply().isPresent());
        if (!isUsed) {
            return;
        }
        if (room.mobileKg() > 0) {
            DryingRoom more =
                    new DryingRoom(room.mobileDryers() + 1, room.mobileKg(), room.blenders(), room.looksAhead());
            add(Relief.Kind.DRYER, "mobile dryers", "one more", changed.drying(more));
        }
        if (room.blenders() < Integer.MAX_VALUE) {
            DryingRoom more =
                    new DryingRoom(room.mobileDryers(), room.mobileKg(), room.blenders() + 1, room.looksAhead());
            add(Relief.Kind.DRYER, "blenders", "one more", changed.drying(more));
        }
    }

    private void ovens() {
        QualityRules rules = plant.finishing().quality();
        rules.exposure()
                .filter(exposure -> exposure.beyond() == Exposure.Beyond.RE_DRY)
                .ifPresent(exposure -> add(
                        Relief.Kind.OVEN,
                        "drying again",
                        "one more oven",
                        changed.quality(new QualityRules(rules.lab(), Optional.of(withOven(exposure))))));
    }

    private static Exposure withOven(Exposure old) {
        Exposure.Oven oven = old.oven();
        return new Exposure(
                old.beyond(),
                old.order(),
                new Exposure.Oven(oven.ovens() + 1, oven.spools(), oven.dryingS(), oven.scrapped(), oven.crew()));
    }
}
