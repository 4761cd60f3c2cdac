package spoolyard.core.account;

import java.util.Optional;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineUse.HeaterUse;

/**
 * What one line drew besides the base load of the plant. Immutable.
 *
 * @param line line name
 * @param heatUps heat-ups begun
 * @param hotH heaters on, hours
 * @param standbyH hot with the screw standing, hours
 * @param massKwh by mass, kWh
 * @param heatUpKwh heat-ups, kWh
 * @param standbyKwh hot standby, kWh
 */
public record LineEnergy(
        String line, long heatUps, double hotH, double standbyH, double massKwh, double heatUpKwh, double standbyKwh) {
    /**
     * Of a line. What the heaters of its zones drew, if it has any, stands in place of the flat values.
     *
     * @param line what it did
     * @param kwhPerKg drawn for each kilogram through the die, kWh/kg
     * @param draws what it draws besides
     * @return its energy
     */
    static LineEnergy of(LineResult line, double kwhPerKg, EnergyUse.LineEnergy draws) {
        long hotTicks = line.use().hot().stream()
                .mapToLong(period -> period.endTick() - period.startTick())
                .sum();
        Optional<HeaterUse> heaters = line.use().heaters();
        double standbyH = line.use().standbyS() / 3600;
        return new LineEnergy(
                line.line(),
                line.use().heatUps(),
                Ticks.toHours(hotTicks),
                standbyH,
                kwhPerKg * line.fedKg(),
                heaters.map(HeaterUse::heatUpKwh)
                        .orElse(draws.heatUpKwh() * line.use().heatUps()),
                heaters.map(HeaterUse::standbyKwh).orElse(draws.standbyKw() * standbyH));
    }

    /**
     * All three.
     *
     * @return kWh
     */
    public double totalKwh() {
        return massKwh + heatUpKwh + standbyKwh;
    }
}
