package spoolyard.analysis.schedule;

import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.HeatZone;
import spoolyard.core.plant.Polymer;

/** Mean times to heat a line, from cold or from one polymer to another. */
final class Warming {
    private Warming() {}

    /** From cold to the set points of a polymer, seconds. The slowest zone decides. */
    static double fromColdS(HeatUp how, Polymer polymer) {
        if (how instanceof HeatUp.Zoned zoned) {
            return zoned.zones().stream()
                    .mapToDouble(zone -> zone.heatingS(zoned.airC(), zone.targetC(polymer), zoned.airC()))
                    .max()
                    .orElse(0);
        }
        return how instanceof HeatUp.Timed timed ? timed.timeS().mean() : 0;
    }

    /** From the set points of a polymer to those of another, seconds. */
    static double moveS(HeatUp how, Polymer from, Polymer to, double secondsPerK) {
        if (how instanceof HeatUp.Zoned zoned) {
            return zoned.zones().stream()
                    .mapToDouble(zone -> zoneS(zone, zone.targetC(from), zone.targetC(to), zoned.airC()))
                    .max()
                    .orElse(0);
        }
        return Math.abs(to.meltTemperatureC() - from.meltTemperatureC()) * secondsPerK;
    }

    private static double zoneS(HeatZone zone, double fromC, double toC, double airC) {
        return toC >= fromC ? zone.heatingS(fromC, toC, airC) : zone.fanCoolingTimeS(fromC, toC, airC);
    }
}
