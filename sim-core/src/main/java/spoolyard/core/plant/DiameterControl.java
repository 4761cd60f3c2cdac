package spoolyard.core.plant;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How the filament diameter of a line wanders and how the haul-off corrects it. Immutable. The rate and length of
 * excursions out of tolerance follow from it.
 *
 * @param toleranceMm greatest allowed deviation from nominal, mm, {@code > 0}
 * @param toleranceMmOf the same for polymers, by code, where it differs
 * @param spreadMm standard deviation of what differs from one sample to the next by chance, mm, {@code >= 0}
 * @param driftSpreadMm standard deviation of the slow drift, mm, {@code >= 0}
 * @param driftTimeS time in which the correlation of the drift falls to 1/e, seconds, {@code > 0}
 * @param sampleS time from one sample to the next, seconds, {@code > 0}
 * @param bathM from die to gauge, metres, {@code > 0}; over the line speed it is the dead time
 * @param gain part of the mean deviation measured over a dead time that is corrected at its end, in [0, 1); at 1 the
 *     loop is no longer stable
 * @param joinS excursions closer than this count as one, seconds, {@code >= 0}
 */
public record DiameterControl(
        double toleranceMm,
        Map<String, Double> toleranceMmOf,
        double spreadMm,
        double driftSpreadMm,
        double driftTimeS,
        double sampleS,
        double bathM,
        double gain,
        double joinS) {
    /** Checks the ranges and copies the map. */
    public DiameterControl {
        require(toleranceMm > 0, "toleranceMm", toleranceMm, "> 0");
        require(spreadMm >= 0 && spreadMm + driftSpreadMm > 0, "spreadMm", spreadMm, ">= 0, and some spread > 0");
        require(driftSpreadMm >= 0, "driftSpreadMm", driftSpreadMm, ">= 0");
        require(driftTimeS > 0, "driftTimeS", driftTimeS, "> 0");
        require(sampleS > 0, "sampleS", sampleS, "> 0");
        require(bathM > 0, "bathM", bathM, "> 0");
        require(gain >= 0 && gain < 1, "gain", gain, ">= 0 and < 1");
        require(joinS >= 0, "joinS", joinS, ">= 0");
        toleranceMmOf = Collections.unmodifiableMap(new LinkedHashMap<>(toleranceMmOf));
    }

    /**
     * The tolerance of a polymer.
     *
     * @param polymerCode its code
     * @return greatest allowed deviation, mm
     */
    public double toleranceMm(String polymerCode) {
        return toleranceMmOf.getOrDefault(polymerCode, toleranceMm);
    }

    private static void require(boolean holds, String name, double value, String rule) {
        if (!holds) {
            throw new IllegalArgumentException(name + " = " + value + ". Must be " + rule + ".");
        }
    }
}
