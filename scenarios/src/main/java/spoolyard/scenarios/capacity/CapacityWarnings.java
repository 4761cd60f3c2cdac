package spoolyard.scenarios.capacity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.Warning;

/** Finds what in a sound plant cannot work out, by the arithmetic of {@link CapacitySummary}. */
public final class CapacityWarnings {
    /** Load above which waits grow quickly and nothing is left for losses: common practice, no source. */
    static final double HIGH_LOAD = 0.85;

    private final Plant plant;
    private final CapacitySummary summary;
    private final Origins origins;
    private final List<Warning> warnings = new ArrayList<>();

    private CapacityWarnings(Plant plant, Origins origins) {
        this.plant = plant;
        this.summary = CapacitySummary.of(plant);
        this.origins = origins;
    }

    /** Where the parts of a plant are written. */
    public interface Origins {
        /**
         * Place of a value in the scenario's tree.
         *
         * @param path keys that lead to it
         * @return its origin, or that of the nearest value above it
         */
        Origin of(String... path);

        /**
         * Place of an order.
         *
         * @param id its id
         * @return the origin of its row
         */
        Origin ofOrder(String id);
    }

    /**
     * Finds the warnings.
     *
     * @param plant a sound plant
     * @param origins where its parts are written
     * @return by line, crew, station and order
     */
    public static List<Warning> of(Plant plant, Origins origins) {
        CapacityWarnings found = new CapacityWarnings(plant, origins);
        for (int i = 0; i < plant.lines().size(); i++) {
            found.checkLine(plant.lines().get(i), found.summary.lines().get(i));
        }
        found.summary.crew().forEach(found::checkCrew);
        found.warnings.addAll(new DryerCheck(plant, origins).warnings());
        found.warnings.addAll(new DryingInVain(plant, origins).warnings());
        found.warnings.addAll(new StockCheck(plant, origins).warnings());
        found.warnings.addAll(new RegrindCheck(plant, origins).warnings());
        found.warnings.addAll(new QualityCheck(plant, origins).warnings());
        found.warnings.addAll(new AttendanceCheck(plant, origins).warnings());
        found.summary.stations().forEach(found::checkStation);
        plant.book().orders().forEach(found::checkDueDate);
        return found.warnings;
    }

    private void checkLine(Line line, LineCapacity capacity) {
        if (capacity.loadShare() > HIGH_LOAD) {
            add(
                    Warning.Kind.LINE_OVERLOADED,
                    origins.of("lines", line.name()),
                    "line %s has %.0f h of work due in the run at full rate and %.0f h to do it in (%.0f %%);"
                            + " changeovers, stoppages and scrap come on top.",
                    line.name(),
                    capacity.loadH(),
                    capacity.scheduledH(),
                    100 * capacity.loadShare());
        }
        plant.book().orders().stream()
                .filter(order -> order.lines().contains(line.name()))
                .map(order -> SwapArithmetic.of(line, order.product()))
                .distinct()
                .forEach(arithmetic -> checkWinder(line, arithmetic));
    }

    private void checkWinder(Line line, SwapArithmetic arithmetic) {
        double winderMPerS = line.winder().maxSpeedMPerS();
        if (arithmetic.leastWinderMPerS() > winderMPerS) {
            add(
                    Warning.Kind.WINDER_TOO_SLOW,
                    origins.of("lines", line.name(), "winder"),
                    "line %s winds at most at %.1f m/min; %s needs %.1f m/min to catch up before the next spool is full.",
                    line.name(),
                    60 * winderMPerS,
                    arithmetic.label(),
                    60 * arithmetic.leastWinderMPerS());
        }
        if (arithmetic.longestWaitS() < 0) {
            add(
                    Warning.Kind.ACCUMULATOR_TOO_SMALL,
                    origins.of("lines", line.name(), "accumulator"),
                    "line %s loses filament at most swaps with %s: even without a wait the swap is %.1f s too long.",
                    line.name(),
                    arithmetic.label(),
                    -arithmetic.longestWaitS());
        }
    }

    private void checkCrew(CrewCapacity crew) {
        if (crew.heads() > 0 && crew.loadShare() > HIGH_LOAD) {
            add(
                    Warning.Kind.CREW_OVERLOADED,
                    origins.of("shifts", "pattern", crew.shift(), "crew"),
                    "in shift %s the spools keep %.2f of %.2f %s busy when all lines run (%.0f %%);"
                            + " walking, stoppages and changeovers come on top.",
                    crew.shift(),
                    crew.attendedHeads(),
                    crew.presentHeads(),
                    crew.role(),
                    100 * crew.loadShare());
        }
    }

    private void checkStation(StationCapacity station) {
        if (station.demandSpools() > station.capacitySpools()) {
            add(
                    Warning.Kind.FINISHING_TOO_SLOW,
                    origins.of("finishing", station.station()),
                    "%s can do %.0f spools in the run with the people there are, and %.0f come.",
                    station.station(),
                    station.capacitySpools(),
                    station.demandSpools());
        } else if (station.peakWaiting() > station.roomSpools()) {
            add(
                    Warning.Kind.RACK_TOO_SMALL,
                    origins.of("finishing", station.station(), "rack"),
                    "up to %.0f spools wait for %s, which is closed up to %.0f h at a time;"
                            + " its rack and those before it hold %.0f.",
                    station.peakWaiting(),
                    station.station(),
                    station.longestClosedH(),
                    station.roomSpools());
        }
    }

    /** An order is made on one line, from its release on, in the hours in which the line is meant to run. */
    private void checkDueDate(Order order) {
        if (order.lines().isEmpty() || order.dueTick() > plant.horizonTicks()) {
            return;
        }
        double massKg = LoadLevelling.massKg(plant, order);
        boolean canBe = plant.lines().stream()
                .filter(line -> order.lines().contains(line.name()))
                .anyMatch(line -> massKg / line.rateKgPerH(order.product())
                        <= OpenTime.scheduledH(line, Math.max(0, order.releaseTick()), order.dueTick()));
        if (!canBe) {
            add(
                    Warning.Kind.DUE_TOO_SOON,
                    origins.ofOrder(order.id()),
                    "order %s (%s, %.0f kg) is due before any line could finish it.",
                    order.id(),
                    order.product().label(),
                    massKg);
        }
    }

    private void add(Warning.Kind kind, Origin origin, String form, Object... values) {
        warnings.add(new Warning(kind, origin, String.format(Locale.ROOT, form, values)));
    }
}
