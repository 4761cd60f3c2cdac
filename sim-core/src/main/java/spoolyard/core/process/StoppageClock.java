package spoolyard.core.process;

import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Variate;
import spoolyard.core.record.LineResult.StoppageResult;

/**
 * The clock of one cause of stoppage at one station or strand. It counts seconds or kilograms at a rate that its station
 * sets, and strikes when what was drawn has run out; then it stands until {@link #fixed()}.
 */
final class StoppageClock {
    private final World world;
    private final Stoppage cause;
    private final Variate untilNext;
    private final Variate duration;
    private final TimedEvent strike;
    private double left;
    private double rate;
    private boolean standing;
    private long last;
    private long struckTick;
    private long waitTicks;
    private long stoodTicks;
    private long count;

    StoppageClock(World world, Stoppage cause, String owner, Struck struck) {
        this.world = world;
        this.cause = cause;
        String name = owner + " / " + cause.name();
        this.untilNext = world.streams().variate(cause.untilNext(), name + " / until next");
        this.duration = world.streams().variate(cause.durationS(), name + " / duration");
        this.strike = new TimedEvent(world.engine(), Phase.FINISH) {
            @Override
            protected void happen() {
                StoppageClock.this.happen(struck);
            }

            @Override
            public String toString() {
                return name + " strikes";
            }
        };
        this.left = untilNext.next();
        this.rate = cause.clock() == Stoppage.Clock.CALENDAR_TIME ? 1 : 0;
        plan();
    }

    Stoppage cause() {
        return cause;
    }

    /** What it takes to put it right this time, ticks. */
    long drawDuration() {
        return duration.nextTicks();
    }

    /** Sets how fast it counts: whether the station makes product, and at what mass rate. */
    void station(boolean making, double kgPerS) {
        double next =
                switch (cause.clock()) {
                    case CALENDAR_TIME -> 1;
                    case RUNNING_TIME -> making ? 1 : 0;
                    case MASS -> making ? kgPerS : 0;
                };
        if (next != rate) {
            count();
            rate = next;
            plan();
        }
    }

    /** Counts mass that has passed, for a station that passes it in lots. */
    void passed(double kg) {
        if (cause.clock() == Stoppage.Clock.MASS && !standing) {
            left -= kg;
            if (left <= 0) {
                strike.moveTo(world.now());
            }
        }
    }

    private void count() {
        if (!standing) {
            left = Math.max(0, left - rate * Ticks.toSeconds(world.now() - last));
        }
        last = world.now();
    }

    private void plan() {
        if (standing || rate == 0) {
            strike.cancel();
        } else {
            strike.moveTo(Math.min(Ticks.NEVER, world.now() + Ticks.ofSeconds(left / rate)));
        }
    }

    private void happen(Struck struck) {
        standing = true;
        left = 0;
        count++;
        struckTick = world.now();
        struck.struckBy(this);
    }

    /** It has waited for somebody to put it right. */
    void waited(long ticks) {
        waitTicks += ticks;
    }

    /** Work on it begins only now, because the station was not making product when it struck. */
    void takenUp() {
        struckTick = world.now();
    }

    /** It is put right; the next one is drawn. */
    void fixed() {
        stoodTicks += world.now() - struckTick;
        standing = false;
        left = untilNext.next();
        last = world.now();
        plan();
    }

    boolean isStanding() {
        return standing;
    }

    StoppageResult result() {
        long openTicks = standing ? world.now() - struckTick : 0;
        return new StoppageResult(
                cause.name(), count, Ticks.toSeconds(stoodTicks + openTicks), Ticks.toSeconds(waitTicks));
    }
}
