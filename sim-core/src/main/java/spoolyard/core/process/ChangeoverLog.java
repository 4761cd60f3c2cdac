package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult.ChangeoverResult;
import spoolyard.core.record.ScrapCause;

/** What each changeover of a line has taken. */
final class ChangeoverLog {
    private final World world;
    private final String line;
    private final LineLedger ledger;
    private final List<ChangeoverResult> finished = new ArrayList<>();
    private Optional<Product> from = Optional.empty();
    private Optional<Product> to = Optional.empty();
    private long startTick;
    private long endTick;
    private double purgedBeforeKg;
    private double purgedKg;
    private long crewTicks;
    private long waitTicks;
    private long stepTick;

    ChangeoverLog(World world, String line, LineLedger ledger) {
        this.world = world;
        this.line = line;
        this.ledger = ledger;
    }

    /** A line goes over to a product; nothing is written unless a step of the changeover begins. */
    void begin(Optional<Product> before, Product after) {
        close(false);
        from = before;
        to = Optional.of(after);
        startTick = Ticks.NEVER;
    }

    /** A step of the changeover begins or waits. */
    void touch() {
        if (to.isPresent() && startTick == Ticks.NEVER) {
            startTick = world.now();
            endTick = startTick;
            purgedBeforeKg = purgeScrapKg();
            purgedKg = 0;
            crewTicks = 0;
            waitTicks = 0;
        }
    }

    void stepBegins(Step step, long waitedTicks) {
        if (step.isChangeover()) {
            touch();
            waitTicks += waitedTicks;
            stepTick = world.now();
        }
    }

    void stepEnds(Step step) {
        if (step.isChangeover()) {
            endTick = world.now();
            purgedKg = purgeScrapKg() - purgedBeforeKg;
            if (!step.crew().isNobody()) {
                crewTicks += endTick - stepTick;
            }
        }
    }

    /** The line makes product. */
    void end() {
        close(true);
    }

    private void close(boolean done) {
        to.filter(product -> startTick != Ticks.NEVER).ifPresent(product -> finished.add(result(product, done)));
        to = Optional.empty();
    }

    private ChangeoverResult result(Product after, boolean done) {
        return new ChangeoverResult(
                line,
                from.map(Product::label).orElse(""),
                after.label(),
                from.map(product -> product.colour().code()).orElse(""),
                after.colour().code(),
                startTick,
                done ? endTick : Ticks.NEVER,
                purgedKg,
                Ticks.toSeconds(crewTicks),
                Ticks.toSeconds(waitTicks));
    }

    private double purgeScrapKg() {
        return ledger.scrapKg[ScrapCause.COLOUR_PURGE.ordinal()]
                + ledger.scrapKg[ScrapCause.POLYMER_PURGE.ordinal()]
                + ledger.scrapKg[ScrapCause.APPROVAL.ordinal()];
    }

    /** All changeovers, the one under way included. */
    List<ChangeoverResult> results() {
        List<ChangeoverResult> all = new ArrayList<>(finished);
        to.filter(product -> startTick != Ticks.NEVER).ifPresent(product -> all.add(result(product, false)));
        return all;
    }
}
