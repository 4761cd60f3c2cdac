package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Exposure;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;

/** The stations at which spools are put right. Their racks have no limit: what cannot go on must not block what can. */
final class Rework {
    private final World world;
    private final CrewDesk desk;
    private final List<StationProcess> used = new ArrayList<>();
    private final StationProcess sorting;
    private final StationProcess respooling;
    private final StationProcess oven;

    Rework(World world, CrewDesk desk, QualityRules rules) {
        this.world = world;
        this.desk = desk;
        Lab.Refusal refusal = rules.lab().map(Lab::refusal).orElse(Lab.Refusal.GRIND);
        Place place = rules.lab().map(Lab::place).orElse(Place.ORIGIN);
        this.sorting = station("sorting", refusal.sorting(), place);
        this.respooling = station("re-spooling", refusal.respooling(), place);
        Exposure.Oven how = rules.exposure().map(Exposure::oven).orElse(Exposure.Oven.NONE);
        this.oven = station("drying again", how.ovens(), how.spools(), how.dryingS(), how.crew(), place);
        note(refusal.sorted() > 0, sorting);
        note(refusal.respooled() > 0, respooling);
        note(rules.exposure().filter(e -> e.beyond() == Exposure.Beyond.RE_DRY).isPresent(), oven);
    }

    private void note(boolean isUsed, StationProcess station) {
        if (isUsed) {
            used.add(station);
        }
    }

    private StationProcess station(String name, Lab.Work work, Place place) {
        return station(name, work.places(), 1, work.takesS(), work.crew(), place);
    }

    private StationProcess station(String name, int places, int batch, Law takesS, CrewNeed crew, Place place) {
        FinishingStation description = new FinishingStation(
                name,
                TaskKind.REWORK,
                places,
                List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, batch, takesS)),
                crew,
                List.of(new Window(name, 0, world.plant().horizonTicks())),
                Integer.MAX_VALUE,
                0,
                List.of(),
                place);
        return new StationProcess(world, desk, description, StationSort.REWORK, new Rack(world, Integer.MAX_VALUE));
    }

    StationProcess sorting() {
        return sorting;
    }

    StationProcess respooling() {
        return respooling;
    }

    StationProcess oven() {
        return oven;
    }

    /** Those to which spools can come. */
    List<StationProcess> used() {
        return used;
    }
}
