package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.Optional;
import java.util.OptionalLong;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.quantity.Ticks;

/**
 * One material in one dryer for one line: cleaned for, loaded batch by batch, dried, and drawn in the order loaded. A batch
 * is dry from an instant on, however the ones before it were drawn.
 */
final class Charge extends Task {
    private record Batch(long dryTick, double kg) {}

    /** Who is told when the charge becomes dry or runs out. */
    interface Listener {
        /** A batch is loaded. */
        void loaded();

        /** The material to be drawn next is dry. */
        void dry();

        /** The store has nothing to load. */
        void lacks();

        /** Nothing that is dry is left. */
        void ranOut();
    }

    private final World world;
    private final CrewDesk desk;
    private final SharedDryers shared;
    private final MaterialSupply how;
    private final SupplyTimes times;
    private final Listener listener;
    private final Dryer dryer;
    private final String material;
    private final String polymer;
    private final long dryingTicks;
    private final ArrayDeque<Batch> batches = new ArrayDeque<>();
    private final BatchSource source;
    private final Runnable blenderClaim = this::blenderFree;
    private final Runnable storeClaim = this::storeRose;
    private final TimedEvent turn;
    private boolean cleaning;
    private boolean hasBlender;
    private boolean loading;
    private double firstLeftKg;
    private double kgPerS;
    private double contentKg;
    private double weighedKg;
    private Optional<Stock> waitsFor = Optional.empty();
    private long last;

    Charge(
            World world,
            CrewDesk desk,
            SharedDryers shared,
            Stores stores,
            LineSupply owner,
            Dryer dryer,
            Product product) {
        super(TaskKind.MATERIAL, desk.rolesOf(owner.how().crew()), owner.line().index(), owner.place());
        this.world = world;
        this.desk = desk;
        this.shared = shared;
        this.how = owner.how();
        this.times = owner.times();
        this.listener = owner;
        this.dryer = dryer;
        this.material = how.materialOf(product);
        this.polymer = product.polymer().code();
        this.dryingTicks = Ticks.ofSeconds(product.polymer().dryingS());
        this.source = new BatchSource(stores, how, product);
        this.last = world.now();
        this.turn = new TimedEvent(world.engine(), Phase.FINISH) {
            @Override
            protected void happen() {
                turn();
            }

            @Override
            public String toString() {
                return material + " in the dryer of line "
                        + owner.line().description().name();
            }
        };
    }

    String material() {
        return material;
    }

    String polymer() {
        return polymer;
    }

    Dryer dryer() {
        return dryer;
    }

    /** Begins to prepare it. */
    void prepare() {
        cleaning = dryer.mustBeCleanedFor(material);
        dryer.holds(material);
        if (cleaning) {
            desk.raise(this);
        } else {
            askToLoad();
        }
    }

    /** Is full of dry material at once, as if loaded by the batch: the state at the start of a run. */
    void isThere() {
        dryer.holds(material);
        double leftKg = source.weigh(dryer.capacityKg);
        double batchKg = how.batchKg() > 0 ? how.batchKg() : leftKg;
        while (leftKg > 0) {
            add(Math.min(batchKg, leftKg), world.now());
            leftKg = leftKg == Double.POSITIVE_INFINITY ? 0 : leftKg - batchKg;
        }
        loadMore();
    }

    /** Whether it holds nothing, neither dry nor drying. */
    boolean isEmpty() {
        return batches.isEmpty();
    }

    /** Whether there is dry material to draw now. */
    boolean isDry() {
        return !batches.isEmpty() && batches.element().dryTick() <= world.now();
    }

    /** Resin of the store in it or on its way into it, with regrind blended in; below 0 if the throat was drawn empty too. */
    double storedKg() {
        advance();
        return source.naturalKg(contentKg + weighedKg);
    }

    /** When the material to be drawn next is dry; empty while it is not loaded. */
    OptionalLong dryTick() {
        return batches.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of(batches.element().dryTick());
    }

    /** Draws at a rate from now on. */
    void draw(double rateKgPerS) {
        advance();
        kgPerS = rateKgPerS;
        plan();
    }

    /** Gives it up. */
    void end() {
        turn.cancel();
        waitsFor.ifPresent(stock -> stock.withdrawClaim(storeClaim));
        waitsFor = Optional.empty();
        shared.withdrawBlenderClaim(blenderClaim);
        if (!isIdle()) {
            desk.withdraw(this);
        }
        if (hasBlender) {
            hasBlender = false;
            shared.giveBackBlender();
        }
        giveBack();
    }

    /** What was weighed or still lies in it goes back to the store; what lies in one with a loader never left it. */
    private void giveBack() {
        if (how.batchKg() > 0) {
            advance();
            source.giveBack(contentKg + weighedKg);
            weighedKg = 0;
        }
    }

    // ------------------------------------------------------------------ loading

    private void askToLoad() {
        loading = true;
        waitsFor = source.missing();
        if (waitsFor.isPresent()) {
            waitsFor.get().claim(storeClaim);
            listener.lacks();
        } else if (how.layout() == MaterialSupply.Layout.BLEND_FIRST) {
            shared.claimBlender(blenderClaim);
        } else {
            desk.raise(this);
        }
    }

    private void storeRose() {
        waitsFor = Optional.empty();
        askToLoad();
    }

    private void blenderFree() {
        hasBlender = true;
        desk.raise(this);
    }

    @Override
    long begin() {
        if (cleaning) {
            return times.cleanTicks();
        }
        weighedKg = source.weigh(how.batchKg());
        return weighedKg > 0 ? times.loadTicks() : 0;
    }

    @Override
    long nextStage() {
        return DONE;
    }

    @Override
    void ended() {
        if (cleaning) {
            cleaning = false;
            askToLoad();
            return;
        }
        loading = false;
        if (hasBlender) {
            hasBlender = false;
            shared.giveBackBlender();
        }
        advance();
        double kg = weighedKg;
        weighedKg = 0;
        addIfAny(kg, world.now() + dryingTicks);
        if (isDry()) {
            listener.dry();
        }
        loadMore();
        listener.loaded();
    }

    private void addIfAny(double kg, long dryTick) {
        if (kg > 0) {
            add(kg, dryTick);
        }
    }

    private void loadMore() {
        boolean hasRoom = contentKg + how.batchKg() <= dryer.capacityKg + Stock.SLACK;
        if (how.batchKg() > 0 && !loading && hasRoom) {
            askToLoad();
        }
    }

    private void add(double kg, long dryTick) {
        if (batches.isEmpty()) {
            firstLeftKg = kg + Math.min(0, firstLeftKg);
        }
        batches.add(new Batch(dryTick, kg));
        contentKg += kg;
        plan();
    }

    // ------------------------------------------------------------------ drawing

    private void advance() {
        double drawnKg = kgPerS * Ticks.toSeconds(world.now() - last);
        last = world.now();
        firstLeftKg -= drawnKg;
        contentKg -= drawnKg;
    }

    /** The next change: the first batch becomes dry, or it is drawn empty. */
    private void plan() {
        if (batches.isEmpty()) {
            turn.cancel();
        } else if (!isDry()) {
            turn.moveTo(batches.element().dryTick());
        } else if (kgPerS > 0 && firstLeftKg < Double.POSITIVE_INFINITY) {
            turn.moveTo(world.now() + Ticks.ofSeconds(Math.max(0, firstLeftKg) / kgPerS));
        } else {
            turn.cancel();
        }
    }

    private void turn() {
        advance();
        if (kgPerS > 0 && firstLeftKg <= Stock.SLACK) {
            batches.remove();
            firstLeftKg += batches.isEmpty() ? 0 : batches.element().kg();
            loadMore();
            plan();
            if (!isDry()) {
                listener.ranOut();
            }
        } else {
            plan();
            listener.dry();
        }
    }
}
