package spoolyard.analysis.buffer;

import java.util.Map;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineUse.MaterialUse;

/**
 * What a kilogram of a line's products is worth, by what it made. Immutable.
 *
 * @param materialPerKg resin and concentrate, less what clean scrap brings
 * @param contributionPerKg what a kilogram more sold would bring beyond its own cost; 0 if nobody says
 */
record KilogramValue(double materialPerKg, double contributionPerKg) {
    static KilogramValue of(Prices prices, LineResult result) {
        double fedKg = 0;
        double material = 0;
        double contribution = 0;
        Map<String, Double> contributionPerKg = prices.contributionPerKg().orElse(Map.of());
        for (MaterialUse use : result.use().materials()) {
            double resin = prices.polymerPerKg().getOrDefault(use.polymer(), 0.0);
            double blend = resin * (1 - use.concentrateShare())
                    + (use.concentrateShare() > 0
                            ? use.concentrateShare() * prices.concentrate().perKg(use.colour())
                            : 0);
            fedKg += use.fedKg();
            material += use.fedKg() * blend;
            contribution += use.fedKg() * contributionPerKg.getOrDefault(use.polymer(), 0.0);
        }
        return fedKg == 0
                ? new KilogramValue(0, 0)
                : new KilogramValue(material / fedKg - prices.credit().cleanPerKg(), contribution / fedKg);
    }

    /** Material for what went to the bin, contribution for all that was not sold. */
    double of(LostOutput lost) {
        return lost.wasteKg() * materialPerKg + lost.kg() * contributionPerKg;
    }
}
