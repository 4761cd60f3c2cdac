package spoolyard.scenarios.capacity;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import spoolyard.core.plant.Finishing.Inbound;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;

/**
 * Works out the rows of the finishing stations: a flow of spools in, a flow out while the station works. What stands in
 * the racks of a station, or of one before it, at the start waits for it from then on.
 */
final class StationLoads {
    private final Plant plant;
    private final List<LineCapacity> lines;
    private final List<OpeningSpools> opening = new ArrayList<>();
    private double roomSpools;

    private StationLoads(Plant plant, List<LineCapacity> lines) {
        this.plant = plant;
        this.lines = lines;
    }

    static List<StationCapacity> of(Plant plant, List<LineCapacity> lines) {
        StationLoads loads = new StationLoads(plant, lines);
        return plant.finishing().stations().stream().map(loads::row).toList();
    }

    private StationCapacity row(FinishingStation station) {
        roomSpools += station.waitingPlaces();
        plant.finishing().opening().stream()
                .filter(some -> some.station().equals(station.name()))
                .forEach(opening::add);
        double perPlaceH = new SpoolMix(plant, opening).spoolsPerH(station);
        Flow flow = new Flow(opening.stream().mapToInt(OpeningSpools::spools).sum());
        List<Long> instants = instants(station);
        for (int i = 1; i < instants.size(); i++) {
            long from = instants.get(i - 1);
            long to = instants.get(i);
            double places = places(station, from, to);
            flow.step(Ticks.toHours(to - from), inPerH(from, to), places > 0 ? places * perPlaceH : 0);
        }
        return new StationCapacity(
                station.name(),
                perPlaceH * station.servers(),
                flow.capacity,
                flow.demand,
                flow.longestClosedH,
                flow.peak,
                roomSpools);
    }

    /** Every instant of the run at which a flow may change. */
    private List<Long> instants(FinishingStation station) {
        TreeSet<Long> instants = new TreeSet<>();
        plant.lines().forEach(line -> addEnds(line.workingPeriods(), instants));
        addEnds(station.open(), instants);
        for (Shift shift : plant.shifts()) {
            instants.add(shift.startTick());
            instants.add(shift.endTick());
        }
        instants.add(0L);
        instants.add(plant.horizonTicks());
        return new ArrayList<>(instants.subSet(0L, true, plant.horizonTicks(), true));
    }

    private static void addEnds(List<Window> windows, TreeSet<Long> instants) {
        for (Window window : windows) {
            instants.add(window.startTick());
            instants.add(window.endTick());
        }
    }

    private double inPerH(long from, long to) {
        double made = 0;
        for (int i = 0; i < lines.size(); i++) {
            Line line = plant.lines().get(i);
            boolean runs = OpenTime.overlapTicks(line.workingPeriods(), from, to) > 0;
            double workingH = Ticks.toHours(OpenTime.overlapTicks(line.workingPeriods(), 0, plant.horizonTicks()));
            made += runs ? lines.get(i).spoolsPerH() * Math.min(1, lines.get(i).loadH() / workingH) : 0;
        }
        double inbound = plant.finishing().inbound().stream()
                .mapToDouble((Inbound each) -> 3600 / each.intervalS().mean())
                .sum();
        return made + inbound;
    }

    /** Places at work on average between two instants. */
    private double places(FinishingStation station, long from, long to) {
        if (OpenTime.overlapTicks(station.open(), from, to) == 0) {
            return 0;
        }
        if (station.crew().isNobody()) {
            return station.servers();
        }
        double heads = 0;
        for (Shift shift : plant.shifts()) {
            if (shift.startTick() <= from && to <= shift.endTick()) {
                heads += new Presence(plant.crew()).heads(station.crew().roles(), shift) / shift.pace();
            }
        }
        return Math.min(station.servers(), heads);
    }

    /** The mix of spool sizes of the order book, of what comes from outside and of what stands there for no order. */
    private record SpoolMix(Plant plant, List<OpeningSpools> opening) {
        double spoolsPerH(FinishingStation station) {
            double spools = 0;
            double seconds = 0;
            for (Order order : plant.book().orders()) {
                spools += order.spools();
                seconds += order.spools()
                        * secondsPerSpool(station, order.product().spoolKg());
            }
            for (Inbound inbound : plant.finishing().inbound()) {
                double arriving = Ticks.toSeconds(plant.horizonTicks())
                        / inbound.intervalS().mean();
                spools += arriving;
                seconds += arriving * secondsPerSpool(station, inbound.spoolKg());
            }
            for (OpeningSpools some : opening) {
                int forNoOrder = some.order().isEmpty() ? some.spools() : 0;
                spools += forNoOrder;
                seconds += forNoOrder * secondsPerSpool(station, some.spoolKg());
            }
            return seconds > 0 ? 3600 * spools / seconds : Double.POSITIVE_INFINITY;
        }

        private static double secondsPerSpool(FinishingStation station, double spoolKg) {
            return station.cycles().stream()
                    .filter(cycle -> spoolKg <= cycle.upToSpoolKg())
                    .findFirst()
                    .map(cycle -> cycle.timeS().mean() / cycle.batch() / (1 - station.repeatProbability()))
                    .orElseThrow();
        }
    }

    /** Adds the flows up, stretch by stretch. */
    private static final class Flow {
        private double waiting;
        private double closedH;
        private double peak;
        private double longestClosedH;
        private double capacity;
        private double demand;

        Flow(double opening) {
            waiting = opening;
            peak = opening;
            demand = opening;
        }

        void step(double hours, double inPerH, double outPerH) {
            demand += inPerH * hours;
            capacity += outPerH > 0 ? outPerH * hours : 0;
            waiting = Math.max(0, waiting + (inPerH - outPerH) * hours);
            peak = Math.max(peak, waiting);
            closedH = outPerH > 0 ? 0 : closedH + hours;
            longestClosedH = Math.max(longestClosedH, closedH);
        }
    }
}
