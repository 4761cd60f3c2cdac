package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineUse.HotPeriod;

/** When the heaters of a line are on, and how long it stands at heat. */
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

    HeatLedger(World world, boolean hot) {
        this.world = world;
        this.on = hot;
        this.atHeat = hot;
    }

    void heatUpBegins() {
        book();
        heatUps++;
        if (!on) {
            on = true;
            onSince = world.now();
        }
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
    }

    private void book() {
        if (atHeat && !screwTurns) {
            standbyTicks += world.now() - last;
        }
        last = world.now();
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
