package spoolyard.scenarios.capacity;

import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Winder;

/**
 * What a product asks of winder and crew of a line, by mean values. Immutable.
 *
 * <p>Source: geometry. A strand at speed v fills a spool of length L in T = L / v. While the winder stands for a swap of
 * t seconds after a wait of w seconds the accumulator takes up v (w + t); it may be at most its room C.
 *
 * @param label polymer, diameter and spool; the colour makes no difference
 * @param speedMPerS speed of a strand, v
 * @param fillS time to fill a spool, T, seconds
 * @param spoolsPerH spools of all strands in an hour of running
 * @param attendedS a person's time on one spool, seconds
 * @param longestWaitS longest wait for a person without loss, seconds, may be negative; manual: C / v - t;
 *     two-position: T less the time to unload, as the machine cannot transfer again before
 * @param leastWinderMPerS winder speed below which the catch-up after a swap is not done when the next spool is full,
 *     v T / (T - t), m/s; infinity if the swap takes longer than the spool
 */
public record SwapArithmetic(
        String label,
        double speedMPerS,
        double fillS,
        double spoolsPerH,
        double attendedS,
        double longestWaitS,
        double leastWinderMPerS) {
    /**
     * The arithmetic of a product on a line.
     *
     * @param line the line
     * @param product a product it can make
     * @return the values
     */
    public static SwapArithmetic of(Line line, Product product) {
        double speedMPerS = product.filament().speedMPerS(line.rateKgPerH(product) / line.strands());
        double lengthM = product.filament().lengthM(product.spoolKg() * (1 + line.overlength()));
        double fillS = lengthM / speedMPerS;
        double stopS = stopS(line.winder());
        return new SwapArithmetic(
                product.polymer().code() + " " + product.diameterMm() + " mm, " + product.spoolKg() + " kg",
                speedMPerS,
                fillS,
                line.strands() * 3600 / fillS,
                attendedS(line.winder()),
                line.winder() instanceof Winder.Manual
                        ? line.accumulator().roomM() / speedMPerS - stopS
                        : fillS - attendedS(line.winder()),
                fillS > stopS ? speedMPerS * fillS / (fillS - stopS) : Double.POSITIVE_INFINITY);
    }

    /**
     * People busy with the line while it runs.
     *
     * @return mean number
     */
    public double attendedHeads() {
        return spoolsPerH * attendedS / 3600;
    }

    private static double stopS(Winder winder) {
        return winder instanceof Winder.Manual manual
                ? manual.stopTimeS().mean()
                : ((Winder.TwoPosition) winder).transferTimeS().mean();
    }

    private static double attendedS(Winder winder) {
        return winder instanceof Winder.Manual manual
                ? manual.stopTimeS().mean() + manual.finishTimeS().mean()
                : ((Winder.TwoPosition) winder).unloadTimeS().mean();
    }
}
