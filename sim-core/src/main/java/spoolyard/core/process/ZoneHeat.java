package spoolyard.core.process;

import java.util.Arrays;
import java.util.List;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.HeatZone;
import spoolyard.core.plant.Polymer;
import spoolyard.core.quantity.Ticks;

/**
 * The temperatures of a line's zones. With its heaters off it cools to the air; with them on each zone goes to its set point,
 * upwards at full power, downwards with its fan, and holds it.
 */
final class ZoneHeat {
    private static final double KJ_PER_KWH = 3600;

    private final List<HeatZone> zones;
    private final double airC;
    private final double[] temperatureC;
    private final double[] setPointC;
    private double[] aimC;
    private boolean on;
    private long last;

    ZoneHeat(HeatUp.Zoned how) {
        this.zones = how.zones();
        this.airC = how.airC();
        this.temperatureC = new double[zones.size()];
        Arrays.fill(temperatureC, airC);
        this.setPointC = temperatureC.clone();
        this.aimC = temperatureC.clone();
    }

    /** Is at heat for a polymer at once: the state at the start of a run. */
    void isAtHeatFor(Polymer polymer) {
        timeTo(polymer, 0);
        follow();
        System.arraycopy(setPointC, 0, temperatureC, 0, temperatureC.length);
    }

    /** Notes the set points of a polymer for the next step that goes to them, and says how long it takes from now. */
    double timeTo(Polymer polymer, long now) {
        double[] fromC = temperatureC.clone();
        pass(fromC, Ticks.toSeconds(now - last));
        aimC = zones.stream().mapToDouble(zone -> zone.targetC(polymer)).toArray();
        double slowestS = 0;
        for (int i = 0; i < fromC.length; i++) {
            slowestS = Math.max(slowestS, changeS(i, fromC[i], aimC[i]));
        }
        return slowestS;
    }

    private double changeS(int zone, double fromC, double toC) {
        HeatZone z = zones.get(zone);
        return fromC <= toC ? z.heatingS(fromC, toC, airC) : z.fanCoolingTimeS(fromC, toC, airC);
    }

    /** From now on goes to the set points noted last. Whoever calls has booked up to now. */
    void follow() {
        System.arraycopy(aimC, 0, setPointC, 0, setPointC.length);
        on = true;
    }

    /** Switches the heaters off. Whoever calls has booked up to now. */
    void switchOff() {
        on = false;
    }

    /** Lets the time up to now go by; gives the energy drawn in it, kWh. */
    double book(long now) {
        double seconds = Ticks.toSeconds(now - last);
        last = now;
        return seconds == 0 ? 0 : pass(temperatureC, seconds) / KJ_PER_KWH;
    }

    /** Changes temperatures by a time as the heaters are now set; gives the energy drawn, kJ. */
    private double pass(double[] fromC, double seconds) {
        double drawnKj = 0;
        for (int i = 0; i < fromC.length; i++) {
            if (!on) {
                fromC[i] = zones.get(i).cooledC(fromC[i], seconds, airC);
            } else {
                drawnKj += passOn(i, fromC, seconds);
            }
        }
        return drawnKj;
    }

    private double passOn(int zone, double[] fromC, double seconds) {
        HeatZone z = zones.get(zone);
        double toC = setPointC[zone];
        boolean rises = fromC[zone] < toC;
        double changeS = fromC[zone] == toC ? 0 : changeS(zone, fromC[zone], toC);
        if (seconds < changeS) {
            fromC[zone] = rises ? z.heatedC(fromC[zone], seconds, airC) : z.fanCooledC(fromC[zone], seconds, airC);
        } else {
            fromC[zone] = toC;
        }
        double changingS = Math.min(seconds, changeS);
        return (rises ? z.heaterKw() * changingS : 0) + z.holdingKw(toC, airC) * (seconds - changingS);
    }

    /** Temperature of a zone when last booked, degrees Celsius. */
    double temperatureC(int zone) {
        return temperatureC[zone];
    }
}
