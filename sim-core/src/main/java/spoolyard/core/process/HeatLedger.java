package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Line;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineUse.HeaterUse;
import spoolyard.core.record.LineUse.HotPeriod;

/** When the heaters of a line are on, how long it stands at heat, and what its zones draw. */
final class HeatLedger {
    private final World world;
    private final List<HotPeriod> periods = new ArrayList<>();
    private boolean on;
    private boolean atHeat;
    private boolean screwTurns;
    private long onSince;
    private long last;
    private long standbyTicks;
    private long heatUps;
    private final Optional<ZoneHeat> zones;
    private double heatUpKwh;
    private double standbyKwh;

    HeatLedger(World world, Line line) {
        this.world = world;
        this.on = line.runningAtStart();
        this.atHeat = on;
        this.zones = line.startStop().heatUp() instanceof HeatUp.Zoned how
                ? Optional.of(new ZoneHeat(how))
                : Optional.empty();
    }

    /** Temperatures of the zones; empty if the line is not heated by zone. */
    Optional<ZoneHeat> zones() {
        return zones;
    }

    void heatUpBegins() {
        book();
        heatUps++;
        if (!on) {
            on = true;
            onSince = world.now();
        }
        zones.ifPresent(ZoneHeat::follow);
    }

    /** The zones go to other set points from now on. */
    void setPointsMove() {
        book();
        zones.ifPresent(ZoneHeat::follow);
    }

    void heatUpEnds() {
        book();
        atHeat = true;
    }

    /** The screw turns or stands from now on. */
    void screw(boolean turns) {
        if (turns != screwTurns) {
            book();
            screwTurns = turns;
        }
    }

    /** The heaters are off. */
    void cooled() {
        book();
        if (on && world.now() > onSince) {
            periods.add(new HotPeriod(onSince, world.now()));
        }
        on = false;
        atHeat = false;
        zones.ifPresent(ZoneHeat::switchOff);
    }

    private void book() {
        if (atHeat && !screwTurns) {
            standbyTicks += world.now() - last;
        }
        last = world.now();
        if (zones.isPresent()) {
            bookZones(zones.get().book(last));
        }
    }

    /** What the heaters draw while the screw turns is in what each kilogram draws. */
    private void bookZones(double kwh) {
        if (!atHeat) {
            heatUpKwh += kwh;
        } else if (!screwTurns) {
            standbyKwh += kwh;
        }
    }

    /** What the heaters of the zones drew; empty if the line is not heated by zone. */
    Optional<HeaterUse> heaters() {
        book();
        return zones.map(all -> new HeaterUse(heatUpKwh, standbyKwh));
    }

    long heatUps() {
        return heatUps;
    }

    double standbyS() {
        book();
        return Ticks.toSeconds(standbyTicks);
    }

    /** Every stretch of heat up to now. */
    List<HotPeriod> periods() {
        List<HotPeriod> all = new ArrayList<>(periods);
        if (on && world.now() > onSince) {
            all.add(new HotPeriod(onSince, world.now()));
        }
        return all;
    }
}
