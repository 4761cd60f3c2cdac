package spoolyard.core.gauge;

import spoolyard.core.random.Normal;
import spoolyard.core.random.Uniforms;

/** The deviation of a {@link GaugeLoop} sample by sample, two uniforms a sample. */
final class DiameterTrace {
    private static final int DEAD_TIMES_TO_SETTLE = 64;

    private final GaugeLoop loop;
    private final Uniforms uniforms;
    private final double shockMm;
    private double driftMm;
    private double correctionMm;
    private double measuredMm;
    private double madeSumMm;
    private int inDeadTime;

    /** Begins in the long run: drift drawn from its law, then some dead times for the correction to settle. */
    DiameterTrace(GaugeLoop loop, Uniforms uniforms) {
        this.loop = loop;
        this.uniforms = uniforms;
        this.shockMm = loop.shockMm();
        this.driftMm = loop.driftSpreadMm() * Normal.quantile(uniforms.next());
        for (int i = 0; i < DEAD_TIMES_TO_SETTLE * loop.deadSamples(); i++) {
            nextMm();
        }
    }

    /** The deviation of the next sample at the die, mm. */
    double nextMm() {
        driftMm = loop.driftPerSample() * driftMm + shockMm * Normal.quantile(uniforms.next());
        double deviationMm = driftMm + loop.spreadMm() * Normal.quantile(uniforms.next()) + correctionMm;
        madeSumMm += deviationMm;
        inDeadTime++;
        if (inDeadTime == loop.deadSamples()) {
            correct();
        }
        return deviationMm;
    }

    /** At the end of a dead time: corrects by what the gauge has seen in it, which was made in the one before. */
    private void correct() {
        correctionMm -= loop.gain() * measuredMm;
        measuredMm = madeSumMm / inDeadTime;
        madeSumMm = 0;
        inDeadTime = 0;
    }
}
