package spoolyard.core.gauge;

import spoolyard.core.plant.DiameterControl;

/**
 * The deviation of the diameter from nominal, sample by sample: {@code y = d + w + u}. The drift {@code d} is an AR(1)
 * process, {@code w} is white noise, {@code u} is the correction by the haul-off. Filament reaches the gauge a dead time
 * after the die. Once a dead time the correction is moved by minus the gain times the mean of what the gauge measured
 * during that dead time, so what is made in one dead time is first corrected in the next but one. Immutable.
 *
 * @param sampleS time from one sample to the next, seconds
 * @param deadSamples dead time in samples, {@code >= 1}
 * @param spreadMm standard deviation of the white noise, mm
 * @param driftSpreadMm standard deviation of the drift, mm
 * @param driftPerSample correlation of the drift from one sample to the next, in (0, 1)
 * @param gain gain, in [0, 1)
 */
public record GaugeLoop(
        double sampleS, int deadSamples, double spreadMm, double driftSpreadMm, double driftPerSample, double gain) {
    /**
     * The loop of a line at a speed.
     *
     * @param control how the diameter wanders and is corrected
     * @param speedMPerS speed of the strand, m/s, {@code > 0}
     * @return the loop, its dead time rounded to whole samples, at least one
     */
    public static GaugeLoop of(DiameterControl control, double speedMPerS) {
        double deadS = control.bathM() / speedMPerS;
        return new GaugeLoop(
                control.sampleS(),
                (int) Math.max(1, Math.round(deadS / control.sampleS())),
                control.spreadMm(),
                control.driftSpreadMm(),
                Math.exp(-control.sampleS() / control.driftTimeS()),
                control.gain());
    }

    /**
     * Standard deviation of the change of the drift in a sample that the sample before does not tell.
     *
     * @return mm
     */
    double shockMm() {
        return driftSpreadMm * Math.sqrt(1 - driftPerSample * driftPerSample);
    }
}
