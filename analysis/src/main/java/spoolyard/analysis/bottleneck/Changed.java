package spoolyard.analysis.bottleneck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import spoolyard.core.plant.Accumulator;
import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.Winder;

/**
 * A plant with one part changed.
 *
 * @param plant the plant as it is
 */
record Changed(Plant plant) {
    Plant lines(UnaryOperator<Line> change) {
        return with(plant.lines().stream().map(change).toList(), plant.shifts(), plant.finishing(), plant.drying());
    }

    Plant line(int index, UnaryOperator<Line> change) {
        List<Line> lines = new ArrayList<>(plant.lines());
        lines.set(index, change.apply(lines.get(index)));
        return with(lines, plant.shifts(), plant.finishing(), plant.drying());
    }

    Plant shifts(UnaryOperator<Shift> change) {
        return with(plant.lines(), plant.shifts().stream().map(change).toList(), plant.finishing(), plant.drying());
    }

    Plant station(int index, UnaryOperator<FinishingStation> change) {
        List<FinishingStation> stations = new ArrayList<>(plant.finishing().stations());
        stations.set(index, change.apply(stations.get(index)));
        return finishing(stations, plant.finishing().quality());
    }

    Plant quality(QualityRules rules) {
        return finishing(plant.finishing().stations(), rules);
    }

    Plant drying(DryingRoom room) {
        return with(plant.lines(), plant.shifts(), plant.finishing(), room);
    }

    private Plant finishing(List<FinishingStation> stations, QualityRules rules) {
        Finishing old = plant.finishing();
        Finishing finishing =
                new Finishing(stations, old.cartons(), old.cartonsPerPallet(), old.inbound(), rules, old.opening());
        return with(plant.lines(), plant.shifts(), finishing, plant.drying());
    }

    private Plant with(List<Line> lines, List<Shift> shifts, Finishing finishing, DryingRoom drying) {
        return new Plant(
                plant.name(),
                plant.horizonTicks(),
                lines,
                plant.crew(),
                shifts,
                plant.changeovers(),
                finishing,
                plant.book(),
                drying,
                plant.economy(),
                plant.materials());
    }

    static Line faster(Line line, double factor) {
        Winder winder = line.winder() instanceof Winder.TwoPosition two
                ? new Winder.TwoPosition(
                        factor * two.maxSpeedMPerS(), two.transferTimeS(), two.unloadTimeS(), two.crew())
                : manual((Winder.Manual) line.winder(), factor, 1);
        return line(line, factor * line.nominalRateKgPerH(), line.accumulator(), winder, line.supply());
    }

    private static Winder manual(Winder.Manual winder, double speedFactor, double timeFactor) {
        return new Winder.Manual(
                speedFactor * winder.maxSpeedMPerS(),
                winder.stopTimeS().times(timeFactor),
                winder.finishTimeS().times(timeFactor),
                winder.crew());
    }

    static Line withSwaps(Line line, double timeFactor) {
        Winder winder = line.winder() instanceof Winder.TwoPosition two
                ? new Winder.TwoPosition(
                        two.maxSpeedMPerS(),
                        two.transferTimeS().times(timeFactor),
                        two.unloadTimeS().times(timeFactor),
                        two.crew())
                : manual((Winder.Manual) line.winder(), 1, timeFactor);
        return line(line, line.nominalRateKgPerH(), line.accumulator(), winder, line.supply());
    }

    static Line withRoom(Line line, double factor) {
        Accumulator old = line.accumulator();
        Accumulator accumulator = new Accumulator(old.homeM(), old.homeM() + factor * old.roomM());
        return line(line, line.nominalRateKgPerH(), accumulator, line.winder(), line.supply());
    }

    static Line withHopper(Line line, double factor) {
        Optional<MaterialSupply> supply = line.supply()
                .map(old -> new MaterialSupply(
                        old.layout(),
                        factor * old.hopperKg(),
                        old.batchKg(),
                        old.loadS(),
                        old.cleanS(),
                        old.crew(),
                        old.startsDry()));
        return line(line, line.nominalRateKgPerH(), line.accumulator(), line.winder(), supply);
    }

    private static Line line(
            Line old, double rateKgPerH, Accumulator accumulator, Winder winder, Optional<MaterialSupply> supply) {
        return new Line(
                old.name(),
                old.strands(),
                rateKgPerH,
                old.polymers(),
                old.diametersMm(),
                old.holdUpKg(),
                accumulator,
                winder,
                old.winderReserve(),
                old.overflow(),
                old.overlength(),
                old.defectProbability(),
                old.defectProbabilityAfterThreadUp(),
                old.startStop(),
                old.stoppages(),
                old.plannedStops(),
                old.workingPeriods(),
                old.onLineNow(),
                old.runningAtStart(),
                old.place(),
                supply,
                old.gauge());
    }
}
