package spoolyard.core.process;

import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Polymer;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Variate;
import spoolyard.core.record.LineState;

/** How long a line takes to its set points: by the laws of the scenario, or by the temperatures of its zones. */
final class Heating {
    /** A few rounds settle the start of a heat-up: the line cools far slower than it heats. */
    private static final int ROUNDS = 12;

    private final World world;
    private final Line line;
    private final Optional<ZoneHeat> zones;
    private final Variate heatUp;
    private final Variate soak;
    private Optional<Times> drawn = Optional.empty();

    /** What the next heat-up takes by the laws. */
    private record Times(long heatUpTicks, long soakTicks) {}

    Heating(World world, Line line, HeatLedger ledger) {
        this.world = world;
        this.line = line;
        this.zones = ledger.zones();
        Law time = line.startStop().heatUp() instanceof HeatUp.Timed timed ? timed.timeS() : Law.ZERO;
        this.heatUp = world.streams().variate(time, "line " + line.name() + " / heat-up");
        this.soak = world.streams().variate(line.startStop().soakS(), "line " + line.name() + " / soak");
        if (line.runningAtStart()) {
            Optional<Polymer> held =
                    line.onLineNow().map(product -> product.polymer()).or(this::firstPolymer);
            zones.ifPresent(all -> held.ifPresent(all::isAtHeatFor));
        }
    }

    /** That of the first order in the book that the line may make. */
    private Optional<Polymer> firstPolymer() {
        return world.plant().book().orders().stream()
                .filter(order -> order.lines().contains(line.name()) && line.canMake(order.product()))
                .map(order -> order.product().polymer())
                .findFirst();
    }

    /** Heating up and soaking, begun now. A line whose polymer is not known heats for its first order. */
    List<Step> fromCold(Optional<Polymer> polymer) {
        Times times = timesAt(polymer.or(this::firstPolymer), world.now());
        drawn = Optional.empty();
        return List.of(
                Step.heatUp(times.heatUpTicks()),
                Step.alone("soak", LineState.STARTING, times.soakTicks(), Step.Waste.NONE));
    }

    /** The latest instant at which heating may begin for the line to be ready at one to come; now, if that is too near. */
    long latestStart(Polymer polymer, long readyTick) {
        long start = world.now();
        long before = start;
        for (int round = 0; round < ROUNDS; round++) {
            Times times = timesAt(Optional.of(polymer), start);
            before = start;
            start = Math.max(world.now(), readyTick - times.heatUpTicks() - times.soakTicks());
        }
        return Math.min(before, start);
    }

    private Times timesAt(Optional<Polymer> polymer, long tick) {
        if (drawn.isEmpty()) {
            drawn = Optional.of(new Times(heatUp.nextTicks(), soak.nextTicks()));
        }
        Times byLaw = drawn.get();
        return zones.map(all -> new Times(zoneTicks(all, polymer, tick), byLaw.soakTicks()))
                .orElse(byLaw);
    }

    private static long zoneTicks(ZoneHeat zones, Optional<Polymer> polymer, long tick) {
        return polymer.map(to -> Ticks.ofSeconds(zones.timeTo(to, tick))).orElse(0L);
    }

    /** From the set points of a polymer to those of another. */
    Step move(Polymer from, Polymer to) {
        double kelvin = Math.abs(to.meltTemperatureC() - from.meltTemperatureC());
        double seconds = zones.map(all -> all.timeTo(to, world.now()))
                .orElse(kelvin * world.plant().changeovers().temperatureMoveS());
        return Step.temperatureMove(Ticks.ofSeconds(seconds));
    }

    /** To the set points of a polymer, if the zones have others; a line without zones is always right. */
    Optional<Step> toSetPoints(Polymer polymer) {
        return zones.map(all -> Ticks.ofSeconds(all.timeTo(polymer, world.now())))
                .filter(ticks -> ticks > 0)
                .map(Step::temperatureMove);
    }
}
