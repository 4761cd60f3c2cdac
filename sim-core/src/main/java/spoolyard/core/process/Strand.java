package spoolyard.core.process;

import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.ScrapCause;

/**
 * One strand from die to spool. Lengths are piecewise linear in time: one event stands at the next instant at which a
 * slope changes (spool full, accumulator home, accumulator at its slow-down level or full).
 *
 * <p>The accumulator level counts from its home position. All metres are those of the product on the line.
 */
final class Strand {
    /** Below this, a length is a rounding of the clock: a strand at 5 m/s moves 5 micrometres in a tick. */
    static final double SLACK_M = 1e-5;

    private enum Feed {
        STOPPED,
        PRODUCT,
        WASTE,
        STEP_WASTE
    }

    private final World world;
    private final LineProcess line;
    private final LineLedger ledger;
    private final double roomM;
    private final double slowLevelM;
    private final double catchUpMPerS;
    private final TimedEvent crossing;

    private Spindle spindle;
    private Feed feed = Feed.STOPPED;
    private ScrapCause wasteCause = ScrapCause.START_UP;
    private Winding winding = Winding.STANDING;
    private Crossing next = Crossing.NONE;
    private OverflowCause overflow;
    private boolean slowing;
    private boolean diverted;
    private final Blemishes blemishes = new Blemishes();
    private final SpoolChange change;
    private double doneM;
    private long last;
    private double kgPerM;
    private double targetM;
    private double dieMPerS;
    private double keptShare = 1;
    private double levelM;
    private double woundM;
    private double heldKg;

    Strand(World world, LineProcess line, LineLedger ledger, int number) {
        this.world = world;
        this.line = line;
        this.ledger = ledger;
        this.roomM = line.description().accumulator().roomM();
        this.slowLevelM = line.description().overflow() instanceof OverflowPolicy.Slow slow
                ? slow.fromLevelShare() * roomM
                : Double.POSITIVE_INFINITY;
        this.catchUpMPerS = line.description().winder().maxSpeedMPerS();
        this.change = new SpoolChange(ledger, world.swaps(), line.description().name(), number);
        String name = nameOf(line.description(), number);
        this.crossing = new TimedEvent(world.engine(), Phase.FINISH) {
            @Override
            protected void happen() {
                cross();
            }

            @Override
            public String toString() {
                return name + " level crossing";
            }
        };
    }

    static String nameOf(Line line, int number) {
        return "line " + line.name() + " / strand " + number;
    }

    void attach(Spindle itsSpindle) {
        spindle = itsSpindle;
    }

    /** Takes up a new product; only when nothing of the old one is left in the accumulator or on the spool. */
    void setUp(Product product, double overlength) {
        advance();
        if (levelM + woundM > 0) {
            throw new IllegalStateException("strand of line "
                    + line.description().name() + " still holds " + (levelM + woundM) + " m of the product before.");
        }
        change.winds(product);
        kgPerM = product.filament().kgPerM();
        targetM = product.spoolKg() * (1 + overlength) / kgPerM;
    }

    /** Product at a speed, of which a share is cut out as scrap (while slowed). */
    void feedProduct(double mPerS, double scrapShare) {
        advance();
        feed = Feed.PRODUCT;
        dieMPerS = mPerS;
        keptShare = 1 - scrapShare;
        beginWindingIfReady();
        plan();
    }

    private void beginWindingIfReady() {
        if (winding == Winding.STANDING && spindle.isReady()) {
            beginWinding();
        }
    }

    /** All that passes the die is scrap, while the line goes through a step. */
    void feedStepWaste(double kgPerS, double kgPerMetre, ScrapCause cause) {
        feedWaste(kgPerS, kgPerMetre, cause);
        feed = Feed.STEP_WASTE;
    }

    /** All that passes the die is scrap. */
    void feedWaste(double kgPerS, double kgPerMetre, ScrapCause cause) {
        advance();
        feed = Feed.WASTE;
        if (levelM + woundM == 0) {
            kgPerM = kgPerMetre;
        }
        dieMPerS = kgPerS / kgPerM;
        wasteCause = cause;
        plan();
    }

    void stopFeed() {
        advance();
        feed = Feed.STOPPED;
        dieMPerS = 0;
        plan();
    }

    /** Cuts the strand: what is in the accumulator and on the part spool is scrap. A spool full to the tick is saved. */
    void cut(ScrapCause cause) {
        advance();
        if (winding != Winding.STANDING && woundM >= targetM - SLACK_M) {
            fillSpool();
        }
        ledger.scrap(cause, (levelM + woundM) * kgPerM);
        dropAll();
        winding = Winding.STANDING;
        diverted = false;
        blemishes.clear();
        endOverflow();
        plan();
    }

    private void dropAll() {
        change.emptied();
        doneM += levelM + woundM;
        levelM = 0;
        woundM = 0;
    }

    /** Out of tolerance, cuts the spool in progress short and sends all that is made to waste; in tolerance, ends that. */
    void divert(boolean isOut) {
        advance();
        diverted = isOut;
        if (!isOut) {
            beginWindingIfReady();
            plan();
            return;
        }
        boolean isFull = winding != Winding.STANDING && woundM >= targetM - SLACK_M;
        if (isFull) {
            fillSpool();
        } else if (woundM > SLACK_M) {
            cutSpool();
        }
        ledger.scrap(ScrapCause.GAUGE_CUT, (levelM + woundM) * kgPerM);
        dropAll();
        winding = winding == Winding.CATCHING_UP ? Winding.FOLLOWING : winding;
        endOverflow();
        plan();
        if (isFull) {
            line.spoolFilled();
        }
    }

    private void cutSpool() {
        winding = Winding.STANDING;
        double massKg = woundM * kgPerM;
        doneM += woundM;
        woundM = 0;
        heldKg += massKg;
        ledger.swaps++;
        change.begin(last, levelM);
        spindle.spoolFull(line.shortSpool(massKg));
    }

    /** What enters the accumulator from now on is out of tolerance, or in tolerance again. */
    void blemish(boolean isOut) {
        advance();
        double enteredM = doneM + woundM + levelM;
        if (isOut) {
            blemishes.begin(enteredM);
        } else {
            blemishes.end(enteredM);
        }
    }

    /** The spindle has an empty spool and may turn. */
    void winderReady() {
        advance();
        change.turns(last);
        line.winderReady();
        if (winding == Winding.STANDING && (feed == Feed.PRODUCT || levelM > 0)) {
            beginWinding();
        }
        plan();
    }

    /** A full spool has left the spindle's crew: good ones to the rack, others to scrap. */
    void takenOff(Spool spool) {
        heldKg -= spool.massKg;
        line.takenOff(spool);
    }

    /** The work begins that lets the winder turn. */
    void workBegins() {
        double sinceS = Ticks.toSeconds(world.now() - last);
        change.workBegins(world.now(), levelM + inflowMPerS() * sinceS, inflowMPerS());
    }

    /** The person has left the swap unfinished. */
    void workInterrupted() {
        change.disturbed(world.now());
        holdUpChanged();
    }

    /** Tells of the last spool change. */
    void tellChange() {
        change.tell();
    }

    /** Somebody has arrived at, or left, the swap: what holds it has changed. */
    void holdUpChanged() {
        if (overflow != null) {
            advance();
            overflow = spindle.holdUp();
        }
    }

    boolean isOnProduct() {
        return feed == Feed.PRODUCT;
    }

    boolean isStanding() {
        return winding == Winding.STANDING;
    }

    boolean isWinderReady() {
        return spindle.isReady();
    }

    boolean isOverflowing() {
        return overflow != null;
    }

    boolean isSlowing() {
        return slowing;
    }

    double inProcessKg() {
        return (levelM + woundM) * kgPerM + heldKg;
    }

    /** What passes its die. */
    double dieKgPerS() {
        return feed == Feed.STOPPED ? 0 : dieMPerS * kgPerM;
    }

    double levelM() {
        return levelM;
    }

    /** Adds to the level out of thin air: for tests that prove the balance checks. */
    void plantDefect(double metres) {
        levelM += metres;
    }

    /** Books all flows up to now. */
    void advance() {
        long now = world.now();
        if (now == last) {
            return;
        }
        double seconds = Ticks.toSeconds(now - last);
        last = now;
        double woundNowM = windMPerS() * seconds;
        double inNowM = inflowMPerS() * seconds;
        if (feed != Feed.STOPPED) {
            bookFeed(dieMPerS * seconds, inNowM);
        } else if (overflow != null) {
            change.stands(seconds, overflow);
        }
        levelM += inNowM - woundNowM;
        woundM += woundNowM;
        ledger.peakLevelM = Math.max(ledger.peakLevelM, levelM);
        if (winding == Winding.STANDING) {
            change.reaches(levelM);
        }
    }

    private void bookFeed(double fedM, double inM) {
        ledger.fed(fedM * kgPerM);
        if (feed == Feed.STEP_WASTE) {
            ledger.stepWaste(wasteCause, fedM * kgPerM);
        } else if (feed == Feed.WASTE) {
            ledger.scrap(wasteCause, fedM * kgPerM);
        } else if (diverted) {
            ledger.scrap(ScrapCause.OUT_OF_TOLERANCE, fedM * kgPerM);
        } else if (overflow != null) {
            ledger.scrap(ScrapCause.OVERFLOW, fedM * kgPerM);
            change.loses(fedM, overflow);
        } else if (fedM > inM) {
            ledger.scrap(ScrapCause.SLOWED, (fedM - inM) * kgPerM);
        }
    }

    private double inflowMPerS() {
        return overflow == null ? keptMPerS() : 0;
    }

    /** What enters the accumulator while it has room. */
    private double keptMPerS() {
        return feed == Feed.PRODUCT && !diverted ? dieMPerS * keptShare : 0;
    }

    private double windMPerS() {
        return switch (winding) {
            case STANDING -> 0;
            case FOLLOWING -> inflowMPerS();
            case CATCHING_UP -> catchUpMPerS;
        };
    }

    private void beginWinding() {
        if (levelM > SLACK_M) {
            winding = Winding.CATCHING_UP;
        } else {
            comeHome();
        }
        endOverflow();
    }

    private void endOverflow() {
        overflow = null;
        line.overflowChanged();
        if (slowing) {
            slow(false);
        }
    }

    private void slow(boolean isSlow) {
        slowing = isSlow;
        change.ownFeed(true);
        line.making().slowingChanged();
        change.ownFeed(false);
    }

    private void plan() {
        change.feeds(last, keptMPerS());
        double seconds = Double.POSITIVE_INFINITY;
        next = Crossing.NONE;
        if (winding == Winding.STANDING) {
            double inflow = inflowMPerS();
            if (inflow > 0) {
                boolean slowFirst = !slowing && levelM < slowLevelM && slowLevelM < roomM;
                next = slowFirst ? Crossing.SLOW_LEVEL : Crossing.CAPACITY;
                seconds = ((slowFirst ? slowLevelM : roomM) - levelM) / inflow;
            }
        } else {
            seconds = planWinding();
        }
        if (next == Crossing.NONE) {
            crossing.cancel();
        } else {
            crossing.moveTo(world.now() + Ticks.ofSeconds(Math.max(0, seconds)));
        }
    }

    private double planWinding() {
        double wind = windMPerS();
        if (wind <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        next = Crossing.SPOOL_FULL;
        double toFull = (targetM - woundM) / wind;
        double drain = wind - inflowMPerS();
        if (winding == Winding.CATCHING_UP && drain > 0 && levelM / drain < toFull) {
            next = Crossing.HOME;
            return levelM / drain;
        }
        return toFull;
    }

    private void cross() {
        advance();
        switch (next) {
            case SPOOL_FULL -> {
                fillSpool();
                line.spoolFilled();
            }
            case HOME -> comeHome();
            case SLOW_LEVEL -> slow(true);
            case CAPACITY -> overflow();
            case NONE -> throw new IllegalStateException("a level crossing happened that nobody planned");
        }
        plan();
    }

    /** The accumulator is at home but for the rounding of the clock, which goes on the spool. */
    private void comeHome() {
        winding = Winding.FOLLOWING;
        woundM += levelM;
        levelM = 0;
    }

    private void fillSpool() {
        winding = Winding.STANDING;
        double massKg = woundM * kgPerM;
        doneM += woundM;
        woundM = 0;
        heldKg += massKg;
        ledger.swaps++;
        change.begin(last, levelM);
        spindle.spoolFull(line.newSpool(this, massKg, blemishes.takeUpTo(doneM)));
    }

    private void overflow() {
        OverflowCause cause = spindle.holdUp();
        boolean lineStands = line.description().overflow() instanceof OverflowPolicy.Stop;
        change.overflows(cause, lineStands);
        overflow = cause;
        if (lineStands) {
            line.overflowStop();
        } else {
            line.overflowChanged();
        }
        if (world.log().isOn()) {
            world.tell(line.description().name(), "accumulator full", cause.label());
        }
    }
}
