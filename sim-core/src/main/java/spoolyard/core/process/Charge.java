package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.OptionalLong;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.MaterialSupply;
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
    private final long dryingTicks;
    private final ArrayDeque<Batch> batches = new ArrayDeque<>();
    private final Runnable blenderClaim = this::blenderFree;
    private final TimedEvent turn;
    private boolean cleaning;
    private boolean hasBlender;
    private boolean loading;
    private double firstLeftKg;
    private double kgPerS;
    private double contentKg;
    private long last;

    Charge(
            World world,
            CrewDesk desk,
            SharedDryers shared,
            LineSupply owner,
            Dryer dryer,
            String material,
            double dryingS) {
        super(TaskKind.MATERIAL, desk.rolesOf(owner.how().crew()), owner.line().index(), owner.place());
        this.world = world;
        this.desk = desk;
        this.shared = shared;
        this.how = owner.how();
        this.times = owner.times();
        this.listener = owner;
        this.dryer = dryer;
        this.material = material;
        this.dryingTicks = Ticks.ofSeconds(dryingS);
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

    /** Is full of dry material at once: the state at the start of a run. */
    void isThere() {
        dryer.holds(material);
        add(how.batchKg() == 0 ? Double.POSITIVE_INFINITY : dryer.capacityKg, world.now());
    }

    /** Whether there is dry material to draw now. */
    boolean isDry() {
        return !batches.isEmpty() && batches.element().dryTick() <= world.now();
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
        shared.withdrawBlenderClaim(blenderClaim);
        if (!isIdle()) {
            desk.withdraw(this);
        }
        if (hasBlender) {
            hasBlender = false;
            shared.giveBackBlender();
        }
    }

    // ------------------------------------------------------------------ loading

    private void askToLoad() {
        loading = true;
        if (how.layout() == MaterialSupply.Layout.BLEND_FIRST) {
            shared.claimBlender(blenderClaim);
        } else {
            desk.raise(this);
        }
    }

    private void blenderFree() {
        hasBlender = true;
        desk.raise(this);
    }

    @Override
    long begin() {
        return cleaning ? times.cleanTicks() : times.loadTicks();
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
        add(how.batchKg() == 0 ? Double.POSITIVE_INFINITY : how.batchKg(), world.now() + dryingTicks);
        loadMore();
        listener.loaded();
    }

    private void loadMore() {
        boolean hasRoom = contentKg + how.batchKg() <= dryer.capacityKg + 1e-9;
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
        if (kgPerS > 0 && firstLeftKg <= 1e-6) {
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
