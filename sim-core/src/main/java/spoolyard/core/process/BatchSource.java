package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.Optional;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Product;

/** Where a dryer that is loaded by the batch gets its batches from. */
final class BatchSource {
    private record Portion(double kg, double regrindKg) {}

    private final MaterialSupply how;
    private final Optional<Stock> resin;
    private final Optional<Stock> concentrate;
    private final Optional<Stock> regrind;
    private final double concentrateShare;
    private final double regrindShare;
    private final ArrayDeque<Portion> weighed = new ArrayDeque<>();

    BatchSource(Stores stores, MaterialSupply how, Product product) {
        this.how = how;
        boolean isBlended = how.layout() == MaterialSupply.Layout.BLEND_FIRST;
        this.concentrateShare = isBlended ? product.colour().concentrateShare() : 0;
        this.regrindShare = stores.regrindShare();
        this.resin = how.batchKg() == 0
                ? Optional.empty()
                : stores.resin(product.polymer().code());
        this.concentrate = how.batchKg() == 0 || concentrateShare == 0
                ? Optional.empty()
                : stores.concentrate(product.colour().code());
        this.regrind = how.batchKg() == 0 || !isBlended ? Optional.empty() : stores.regrindFor(product);
    }

    /** What a batch can't be weighed for want of. */
    Optional<Stock> missing() {
        return resin.filter(Stock::isOut).or(() -> concentrate.filter(Stock::isOut));
    }

    /** Takes a batch from the stores, a smaller one if there is no more; a loader takes nothing beforehand. */
    double weigh(double mostKg) {
        if (how.batchKg() == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double byResin =
                resin.map(stock -> stock.free() / (1 - concentrateShare)).orElse(mostKg);
        double byColour =
                concentrate.map(stock -> stock.free() / concentrateShare).orElse(mostKg);
        double kg = Math.max(0, Math.min(mostKg, Math.min(byResin, byColour)));
        double naturalKg = kg * (1 - concentrateShare);
        double regrindKg = regrind.map(stock -> Math.min(regrindShare * naturalKg, Math.max(0, stock.free())))
                .orElse(0.0);
        resin.ifPresent(stock -> stock.take(naturalKg - regrindKg));
        concentrate.ifPresent(stock -> stock.take(kg * concentrateShare));
        regrind.ifPresent(stock -> {
            stock.take(regrindKg);
            weighed.add(new Portion(kg, regrindKg));
        });
        return kg;
    }

    /** What is emptied out of a dryer, the last that was weighed for it, goes back to the store, a blend too. */
    void giveBack(double kg) {
        if (kg < 0) {
            resin.ifPresent(stock -> stock.fedFromThroat(naturalKg(-kg)));
        } else if (kg > 0) {
            double regrindKg = lastRegrindKg(kg);
            resin.ifPresent(stock -> stock.giveBack(kg * (1 - concentrateShare) - regrindKg));
            concentrate.ifPresent(stock -> stock.giveBack(kg * concentrateShare));
            regrind.ifPresent(stock -> stock.giveBack(regrindKg));
        }
    }

    /** What of a mass in the dryer came from the stores of natural and regrind; nothing where a loader takes it as it is fed. */
    double naturalKg(double kg) {
        return how.batchKg() == 0 ? 0 : kg * (1 - concentrateShare);
    }

    private double lastRegrindKg(double kg) {
        double leftKg = kg;
        double regrindKg = 0;
        while (leftKg > 0 && !weighed.isEmpty()) {
            Portion last = weighed.removeLast();
            double share = Math.min(1, leftKg / last.kg);
            regrindKg += share * last.regrindKg;
            leftKg -= last.kg;
        }
        return regrindKg;
    }
}
