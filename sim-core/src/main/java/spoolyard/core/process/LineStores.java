package spoolyard.core.process;

import java.util.Optional;
import java.util.stream.Stream;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.StockItem.Kind;
import spoolyard.core.record.LineState;

/** What a line takes from the stores: resin and colour as it is fed, and an empty spool for each strand. */
final class LineStores {
    private final LineProcess line;
    private final Stores stores;
    private final Optional<LineSupply> supply;
    private final TimedEvent spoolsAreOut;
    private final int strands;
    private Optional<Stock> resin = Optional.empty();
    private Optional<Stock> concentrate = Optional.empty();
    private Optional<Stock> regrind = Optional.empty();
    private Optional<Stock> spools = Optional.empty();
    private Optional<Stock> missing = Optional.empty();
    private double concentrateShare;
    private double driedShare;
    private double driedKgPerS;
    private int mounted;

    LineStores(World world, LineProcess line, Stores stores, Optional<LineSupply> supply) {
        this.line = line;
        this.stores = stores;
        this.supply = supply;
        Line description = line.description();
        this.strands = description.strands();
        this.spoolsAreOut = new TimedEvent(world.engine(), Phase.SIGNAL) {
            @Override
            protected void happen() {
                if (line.isMaking() && mounted < strands) {
                    line.storeRanOut();
                }
            }

            @Override
            public String toString() {
                return "line " + description.name() + " has no empty spool";
            }
        };
        description.onLineNow().ifPresent(this::turnTo);
    }

    private boolean isBatchwise() {
        return supply.filter(source -> source.how().batchKg() > 0).isPresent();
    }

    private boolean isColourBatchwise() {
        return isBatchwise() && supply.orElseThrow().how().layout() == MaterialSupply.Layout.BLEND_FIRST;
    }

    /** From now on the line takes what belongs to a product. */
    void turnTo(Product product) {
        draw(0);
        resin = isBatchwise()
                ? Optional.empty()
                : stores.resin(product.polymer().code());
        concentrate = isColourBatchwise() ? Optional.empty() : concentrateOf(product);
        regrind = isColourBatchwise() ? Optional.empty() : stores.regrindFor(product);
        concentrateShare = product.colour().concentrateShare();
        driedShare = supply.map(source -> source.how().driedShare(product)).orElse(1.0);
    }

    private Optional<Stock> concentrateOf(Product product) {
        return product.colour().concentrateShare() > 0
                ? stores.concentrate(product.colour().code())
                : Optional.empty();
    }

    /** Draws what passes the die, purge compound left out. */
    void draw(double kgPerS) {
        double naturalKgPerS = kgPerS * (1 - concentrateShare);
        boolean isThere = regrind.filter(stock -> kgPerS > 0 && !stock.isOut()).isPresent();
        double regrindKgPerS = isThere ? stores.regrindShare() * naturalKgPerS : 0;
        driedKgPerS = kgPerS * driedShare - regrindKgPerS;
        resin.ifPresent(stock -> stock.draw(line.index(), naturalKgPerS - regrindKgPerS));
        regrind.ifPresent(stock -> stock.draw(line.index(), regrindKgPerS));
        concentrate.ifPresent(stock -> stock.draw(line.index(), kgPerS * concentrateShare));
    }

    /** Of what it draws, what comes out of its dryer: neither regrind nor colour that is dosed at the throat. */
    double driedKgPerS() {
        return driedKgPerS;
    }

    /** Resin of the store, regrind included, that is in the dryers of the line and not fed yet. */
    double driedStoreKg(String polymer) {
        return supply.map(source -> source.storedKg(polymer)).orElse(0.0);
    }

    // ------------------------------------------------------------------ shortage

    /** Whether a line whose order lacks something makes another one. */
    boolean letExchange() {
        return stores.letsExchange();
    }

    boolean hasAllFor(Product product) {
        return missingFor(product).isEmpty();
    }

    /** The first thing that is missing to make a product. */
    Optional<Stock> missingFor(Product product) {
        if (stores.isEmpty()) {
            return Optional.empty();
        }
        Optional<Stock> own = stores.resin(product.polymer().code());
        boolean isInDryer = supply.filter(source -> source.holds(product)).isPresent();
        boolean hasNatural = isBatchwise() && isInDryer;
        boolean hasColour = isColourBatchwise() && isInDryer;
        return Stream.of(
                        own.filter(stock -> !hasNatural && stock.isOut()),
                        concentrateOf(product).filter(stock -> !hasColour && stock.isOut()),
                        spoolsFor(product).filter(this::isTooFew))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Stock> spoolsFor(Product product) {
        return stores.sized(Kind.SPOOLS, product.spoolKg());
    }

    private boolean isTooFew(Stock stock) {
        boolean isMounted = spools.filter(stock::equals).isPresent();
        return stock.free() < strands - (isMounted ? mounted : 0);
    }

    /** The line stands until there is more of something. */
    LineState standFor(Stock stock) {
        missing = Optional.of(stock);
        stock.stands(true);
        return switch (stock.item().kind()) {
            case RESIN -> LineState.NO_RESIN;
            case CONCENTRATE -> LineState.NO_CONCENTRATE;
            case SPOOLS -> LineState.NO_EMPTY_SPOOL;
            case CARTONS, REGRIND ->
                throw new IllegalStateException(
                        "no line waits for " + stock.item().kind());
        };
    }

    /** The line stands no longer, for that reason. */
    void goOn() {
        missing.ifPresent(stock -> stock.stands(false));
        missing = Optional.empty();
    }

    boolean isShort() {
        return missing.isPresent();
    }

    /** Whether the line stands for something that is there. */
    boolean standsForNothing() {
        return missing.filter(stock -> stock.free() >= (stock.item().kind() == Kind.SPOOLS ? strands : 2 * Stock.SLACK))
                .isPresent();
    }

    // ------------------------------------------------------------------ empty spools

    /** Puts an empty spool on each strand. */
    void mount(Product product) {
        Optional<Stock> wanted = spoolsFor(product);
        if (!wanted.equals(spools)) {
            dismount();
            spools = wanted;
        }
        spools.ifPresent(stock -> stock.mount(strands - mounted));
        mounted = strands;
    }

    /** A spool is full or cut off; the next one is put on if there is one. */
    void spoolUsed() {
        spools.ifPresent(stock -> {
            stock.wound();
            if (stock.free() >= 1) {
                stock.mount(1);
            } else {
                mounted--;
                spoolsAreOut.moveTo(line.now());
            }
        });
    }

    /** Spools of the store that are on the strands. */
    int mounted() {
        return spools.isPresent() ? mounted : 0;
    }

    /** Takes the spools off the strands; what was wound on them has been stripped. */
    void dismount() {
        spools.filter(stock -> mounted > 0).ifPresent(stock -> stock.dismount(mounted));
        mounted = 0;
        spools = Optional.empty();
    }
}
