package spoolyard.core.plant;

/**
 * A heated zone of a line between feed and die, as one lump of a single temperature: heated by its heater, cooled by the air
 * around it in proportion to its excess of temperature. Immutable.
 *
 * <p>Source: lumped capacitance with heat generation, Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section
 * 5.3 (from memory): {@code C dT/dt = P - (C / tau) (T - T_air)}, hence {@code T(t) = T_end + (T_0 - T_end) exp(-t / tau)}
 * with {@code T_end = T_air + P tau / C}.
 *
 * @param name its name
 * @param heaterKw power of its heater, kW, {@code > 0}
 * @param capacityKjPerK heat that warms it by one kelvin, kJ/K, {@code > 0}
 * @param coolingS time in which its excess over the air falls to 1/e with the heater off, seconds, {@code > 0}
 * @param fanCoolingS the same when it is cooled to a lower set point, seconds, in (0, coolingS]
 * @param offsetK its set point above (below, if negative) the melt temperature of the polymer, K
 */
public record HeatZone(
        String name, double heaterKw, double capacityKjPerK, double coolingS, double fanCoolingS, double offsetK) {
    /**
     * Set point with a polymer.
     *
     * @param polymer the polymer
     * @return degrees Celsius
     */
    public double targetC(Polymer polymer) {
        return polymer.meltTemperatureC() + offsetK;
    }

    /**
     * Temperature that the heater reaches in the long run.
     *
     * @param airC the air, degrees Celsius
     * @return degrees Celsius
     */
    public double highestC(double airC) {
        return airC + heaterKw * coolingS / capacityKjPerK;
    }

    /**
     * Power that keeps a temperature.
     *
     * @param temperatureC the temperature, degrees Celsius
     * @param airC the air, degrees Celsius
     * @return kW
     */
    public double holdingKw(double temperatureC, double airC) {
        return (temperatureC - airC) * capacityKjPerK / coolingS;
    }

    /**
     * Time to a higher temperature, heater fully on.
     *
     * @param fromC where it stands, degrees Celsius
     * @param toC where it goes, degrees Celsius, {@code >= fromC}
     * @param airC the air, degrees Celsius
     * @return seconds; infinity or not a number if {@code toC >= highestC(airC)}
     */
    public double heatingS(double fromC, double toC, double airC) {
        double highestC = highestC(airC);
        return coolingS * Math.log((highestC - fromC) / (highestC - toC));
    }

    /**
     * Temperature after a time with the heater fully on.
     *
     * @param fromC where it stands, degrees Celsius
     * @param seconds how long, {@code >= 0}
     * @param airC the air, degrees Celsius
     * @return degrees Celsius
     */
    public double heatedC(double fromC, double seconds, double airC) {
        return towards(highestC(airC), fromC, seconds, coolingS);
    }

    /**
     * Temperature after a time with the heater off.
     *
     * @param fromC where it stands, degrees Celsius
     * @param seconds how long, {@code >= 0}
     * @param airC the air, degrees Celsius
     * @return degrees Celsius
     */
    public double cooledC(double fromC, double seconds, double airC) {
        return towards(airC, fromC, seconds, coolingS);
    }

    /**
     * Time down to a lower set point, heater off and fan on.
     *
     * @param fromC where it stands, degrees Celsius
     * @param toC where it goes, degrees Celsius, in (airC, fromC]
     * @param airC the air, degrees Celsius
     * @return seconds
     */
    public double fanCoolingTimeS(double fromC, double toC, double airC) {
        return fanCoolingS * Math.log((fromC - airC) / (toC - airC));
    }

    /**
     * Temperature after a time with the heater off and the fan on.
     *
     * @param fromC where it stands, degrees Celsius
     * @param seconds how long, {@code >= 0}
     * @param airC the air, degrees Celsius
     * @return degrees Celsius
     */
    public double fanCooledC(double fromC, double seconds, double airC) {
        return towards(airC, fromC, seconds, fanCoolingS);
    }

    private static double towards(double endC, double fromC, double seconds, double timeConstantS) {
        return endC + (fromC - endC) * Math.exp(-seconds / timeConstantS);
    }
}
