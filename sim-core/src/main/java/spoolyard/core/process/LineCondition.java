package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.record.ScrapCause;

/** What a line must go through before it can make product: its heat, its strands, what its screw holds, and its colour. */
final class LineCondition {
    private final HeatLedger heat;
    private final ColourApproval colour;
    private boolean hot;
    private boolean staleMelt;
    private boolean threaded;
    private boolean stable;
    private Optional<Product> inScrew;
    private Optional<Stoppage> unsettledBy = Optional.empty();
    private ScrapCause cause = ScrapCause.START_UP;
    private long stoodSince;

    LineCondition(Line line, HeatLedger heat, ColourApproval colour) {
        this.heat = heat;
        this.colour = colour;
        boolean running = line.runningAtStart();
        this.hot = running;
        this.staleMelt = !running;
        this.threaded = running;
        this.stable = running;
        this.inScrew = line.onLineNow();
    }

    boolean isHot() {
        return hot;
    }

    /** Whether the melt has been cold since it last made product, so that the first of it is scrap. */
    boolean hasStaleMelt() {
        return staleMelt;
    }

    boolean isThreaded() {
        return threaded;
    }

    boolean isStable() {
        return stable;
    }

    /** What the screw holds; empty means clean. */
    Optional<Product> inScrew() {
        return inScrew;
    }

    /** Since when the screw has stood, if it stands. */
    long stoodSince() {
        return stoodSince;
    }

    /** Why threading and stabilising is to be done. */
    ScrapCause cause() {
        return cause;
    }

    /** The stoppage after which it must settle, if that is why. */
    Optional<Stoppage> unsettledBy() {
        return unsettledBy;
    }

    boolean isReadyFor(Product product) {
        return hot
                && threaded
                && stable
                && !colour.isRefused()
                && inScrew.map(product::sameMelt).orElse(true);
    }

    void holds(Product product) {
        inScrew = Optional.of(product);
    }

    void heated() {
        hot = true;
    }

    void screwStopped(long now) {
        stoodSince = now;
    }

    void cooled() {
        heat.cooled();
        hot = false;
        staleMelt = true;
        unthreaded(ScrapCause.START_UP);
    }

    /** The strands are out of the line. */
    void unthreaded(ScrapCause why) {
        threaded = false;
        unstable(why, Optional.empty());
    }

    /** Diameter and colour must settle again. */
    void unstable(ScrapCause why, Optional<Stoppage> by) {
        stable = false;
        cause = why;
        unsettledBy = by;
    }

    /** The judgement of its colour. */
    ColourApproval colour() {
        return colour;
    }

    void settled() {
        colour.programOver();
        hot = true;
        staleMelt = false;
        threaded = true;
        stable = true;
        unsettledBy = Optional.empty();
        cause = ScrapCause.START_UP;
    }
}
