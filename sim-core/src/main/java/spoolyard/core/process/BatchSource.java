package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Product;

/** Where a dryer that is loaded by the batch gets its batches from. */
final class BatchSource {
    private final MaterialSupply how;
    private final Optional<Stock> resin;
    private final Optional<Stock> concentrate;
    private final double concentrateShare;

    BatchSource(Stores stores, MaterialSupply how, Product product) {
        this.how = how;
        boolean isBlended = how.layout() == MaterialSupply.Layout.BLEND_FIRST;
        this.concentrateShare = isBlended ? product.colour().concentrateShare() : 0;
        this.resin = how.batchKg() == 0
                ? Optional.empty()
                : stores.resin(product.polymer().code());
        this.concentrate = how.batchKg() == 0 || concentrateShare == 0
                ? Optional.empty()
                : stores.concentrate(product.colour().code());
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
        resin.ifPresent(stock -> stock.take(kg * (1 - concentrateShare)));
        concentrate.ifPresent(stock -> stock.take(kg * concentrateShare));
        return kg;
    }

    /** What is emptied out of a dryer goes back to the store, a blend too. */
    void giveBack(double kg) {
        if (kg > 0) {
            resin.ifPresent(stock -> stock.giveBack(kg * (1 - concentrateShare)));
            concentrate.ifPresent(stock -> stock.giveBack(kg * concentrateShare));
        }
    }
}
