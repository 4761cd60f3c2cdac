package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.List;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.StockItem;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Variate;
import spoolyard.core.record.StockResult;

/**
 * An article in store. Its level is piecewise linear: one event stands at the next instant at which it reaches the reorder
 * point or nothing. A piece that a strand winds on is still there, but nobody else can take it.
 */
final class Stock {
    /** Below this, a mass is a rounding of the clock, and there is nothing. */
    static final double SLACK = 1e-6;

    private final World world;
    private final StockItem item;
    private final double[] drawKgPerS;
    private final TimedEvent mark;
    private final TimedEvent wake;
    private final Variate leadTime;
    private final ArrayDeque<Runnable> claims = new ArrayDeque<>();
    private final StockClock clock;
    private final double reorderPoint;
    private List<LineProcess> lines = List.of();
    private Runnable packing = () -> {};
    private double kgPerS;
    private double received;
    private double used;
    private double onOrder;
    private double throatKg;
    private int onSpindles;
    private int standing;
    private long ordersPlaced;

    Stock(World world, StockItem item) {
        this.world = world;
        this.item = item;
        this.drawKgPerS = new double[world.plant().lines().size()];
        this.mark = event(Phase.SIGNAL, "reaches a mark", this::markReached);
        this.wake = event(Phase.SERVE, "is there again", this::isThereAgain);
        this.leadTime = world.streams()
                .variate(
                        item.reorder().map(StockItem.Reorder::leadTimeS).orElse(Law.ZERO),
                        "stock " + item.kind().label() + " " + item.name() + " / lead time");
        this.clock = new StockClock(world, item.opening());
        this.reorderPoint = item.reorder().map(StockItem.Reorder::point).orElse(Double.NEGATIVE_INFINITY);
    }

    private TimedEvent event(Phase phase, String what, Runnable action) {
        return new TimedEvent(world.engine(), phase) {
            @Override
            protected void happen() {
                action.run();
            }

            @Override
            public String toString() {
                return item.kind().label() + " " + item.name() + " " + what;
            }
        };
    }

    StockItem item() {
        return item;
    }

    /** Who is told when it runs out and when it is there again. */
    void tell(List<LineProcess> allLines, Runnable packers) {
        lines = allLines;
        packing = packers;
    }

    /** Puts the known deliveries on the calendar and orders what is short from the start. */
    void start() {
        for (StockItem.Delivery delivery : item.deliveries()) {
            onOrder += delivery.amount();
            comes(delivery.amount()).at(delivery.tick());
        }
        changed();
    }

    private TimedEvent comes(double amount) {
        return event(Phase.FINISH, "is delivered", () -> {
            onOrder -= amount;
            if (world.log().isOn()) {
                world.tell(item.kind().label() + " " + item.name(), "delivered", Double.toString(amount));
            }
            receive(amount);
        });
    }

    /** More of it comes into store. */
    void receive(double amount) {
        advance();
        received += amount;
        rose();
    }

    /** What is there, kg or pieces. */
    double level() {
        return item.opening() + received - used;
    }

    double received() {
        return received;
    }

    double used() {
        return used;
    }

    /** A shut-down or start went on beyond an empty hopper, with what was in the throat: nobody has taken that from here. */
    void fedFromThroat(double kg) {
        throatKg += kg;
    }

    double fedFromThroatKg() {
        return throatKg;
    }

    int onSpindles() {
        return onSpindles;
    }

    /** What anybody can take now. */
    double free() {
        advance();
        return level() - onSpindles;
    }

    boolean isOut() {
        return free() <= SLACK;
    }

    // ------------------------------------------------------------------ taking

    /** A line draws at a rate from now on. */
    void draw(int line, double rateKgPerS) {
        if (drawKgPerS[line] != rateKgPerS) {
            advance();
            drawKgPerS[line] = rateKgPerS;
            kgPerS = sum(drawKgPerS);
            changed();
        }
    }

    private static double sum(double[] rates) {
        double sum = 0;
        for (double rate : rates) {
            sum += rate;
        }
        return sum;
    }

    /** Takes an amount at once. */
    void take(double amount) {
        advance();
        used += amount;
        changed();
    }

    /** Puts back what was taken. */
    void giveBack(double amount) {
        advance();
        used -= amount;
        rose();
    }

    /** Puts pieces on spindles; they are still there until they are full. */
    void mount(int pieces) {
        onSpindles += pieces;
        changed();
    }

    /** Takes pieces off spindles that stayed empty. */
    void dismount(int pieces) {
        onSpindles -= pieces;
        rose();
    }

    /** A piece that was on a spindle is gone with what was wound on it. */
    void wound() {
        onSpindles--;
        take(1);
    }

    /** A line begins, or ends, to stand for want of it. */
    void stands(boolean does) {
        advance();
        standing += does ? 1 : -1;
    }

    /** Is told once, when it has become more. */
    void claim(Runnable claimant) {
        claims.add(claimant);
    }

    void withdrawClaim(Runnable claimant) {
        claims.remove(claimant);
    }

    // ------------------------------------------------------------------ levels

    private void advance() {
        double seconds = clock.advance(level(), kgPerS, standing);
        used += kgPerS * seconds;
    }

    private void rose() {
        if (clock.isOut() || standing > 0 || !claims.isEmpty()) {
            wake.moveTo(world.now());
        }
        changed();
    }

    /** Orders what is short and plans the next mark. */
    private void changed() {
        clock.shows(level(), level() - onSpindles <= SLACK);
        if (isDue()) {
            reorder(item.reorder().orElseThrow());
        }
        plan();
    }

    private boolean isDue() {
        return level() + onOrder <= reorderPoint + SLACK;
    }

    private void reorder(StockItem.Reorder rule) {
        while (isDue()) {
            onOrder += rule.quantity();
            ordersPlaced++;
            comes(rule.quantity()).in(leadTime.nextTicks());
        }
    }

    private void plan() {
        if (kgPerS <= 0 || level() == Double.POSITIVE_INFINITY) {
            mark.cancel();
            return;
        }
        double trigger = Math.max(0, reorderPoint - onOrder);
        double next = level() > trigger + SLACK ? trigger : 0;
        mark.moveTo(world.now() + Ticks.ofSeconds(Math.max(0, level() - next) / kgPerS));
    }

    private void markReached() {
        advance();
        if (isOut()) {
            for (LineProcess line : lines) {
                if (drawKgPerS[line.index()] > 0) {
                    ranOutFor(line);
                }
            }
        }
        changed();
    }

    private void ranOutFor(LineProcess line) {
        if (item.kind() == StockItem.Kind.REGRIND) {
            line.regrindChanged();
        } else {
            line.storeRanOut();
        }
    }

    private void isThereAgain() {
        if (item.kind() == StockItem.Kind.REGRIND) {
            lines.forEach(LineProcess::regrindChanged);
            return;
        }
        List<Runnable> first = List.copyOf(claims);
        claims.clear();
        first.forEach(Runnable::run);
        lines.forEach(LineProcess::storeRose);
        packing.run();
    }

    // ------------------------------------------------------------------ results

    StockResult result() {
        advance();
        return new StockResult(
                item.kind().label(),
                item.name(),
                item.kind().unit(),
                item.opening(),
                received,
                used,
                level(),
                clock.mean(level()),
                clock.lowest(),
                clock.outS(),
                clock.timesOut(),
                clock.lineWaitS(),
                ordersPlaced);
    }
}
