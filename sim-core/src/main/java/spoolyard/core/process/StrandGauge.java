package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Variate;

/**
 * The excursions of one strand. Its clock runs while the strand makes product. An excursion that a halt interrupts is
 * over: the strand is set right before it makes product again.
 */
final class StrandGauge {
    /** Excursions of one group of products: the clock of each stands while another is made. */
    private static final class Source {
        final Variate untilNext;
        final Variate length;
        long leftTicks;

        Source(World world, Gauge.Excursions excursions, String name) {
            this.untilNext = world.streams().variate(excursions.untilNextS(), name + " / until next");
            this.length = world.streams().variate(excursions.lengthS(), name + " / length");
            this.leftTicks = untilNext.nextTicks();
        }
    }

    private final World world;
    private final LineProcess line;
    private final Strand strand;
    private final Gauge gauge;
    private final GaugeLedger ledger;
    private final TimedEvent change;
    private final List<Source> sources = new ArrayList<>();
    private int current = -1;
    private boolean counting;
    private boolean out;
    private long last;

    StrandGauge(World world, LineProcess line, Strand strand, Gauge gauge, String name) {
        this.world = world;
        this.line = line;
        this.strand = strand;
        this.gauge = gauge;
        this.ledger = line.ledger().gauge;
        gauge.excursions().forEach(each -> sources.add(new Source(world, each, name + " / " + each.label())));
        this.change = new TimedEvent(world.engine(), Phase.FINISH) {
            @Override
            protected void happen() {
                StrandGauge.this.happen();
            }

            @Override
            public String toString() {
                return name + " tolerance";
            }
        };
    }

    /** The strand is set up for a product. */
    void makes(Product product) {
        count();
        current = gauge.indexOf(product);
        plan();
    }

    /** Sets whether the clock runs. */
    void station(boolean makesProduct) {
        if (makesProduct != counting) {
            count();
            counting = makesProduct;
            plan();
        }
    }

    /** The strand was cut: what it makes next is in tolerance. */
    void reset() {
        count();
        if (out) {
            out = false;
            sources.get(current).leftTicks = sources.get(current).untilNext.nextTicks();
        }
        plan();
    }

    /** Books the time out of tolerance up to now. */
    void count() {
        long passed = world.now() - last;
        last = world.now();
        if (counting && current >= 0) {
            sources.get(current).leftTicks -= passed;
            ledger.outTicks += out ? passed : 0;
        }
    }

    private void plan() {
        if (counting && current >= 0) {
            change.moveTo(Math.min(Ticks.NEVER, world.now() + Math.max(0, sources.get(current).leftTicks)));
        } else {
            change.cancel();
        }
    }

    private void happen() {
        count();
        Source source = sources.get(current);
        out = !out;
        source.leftTicks = (out ? source.length : source.untilNext).nextTicks();
        plan();
        line.tell(out ? "out of tolerance" : "in tolerance", "");
        if (out) {
            ledger.excursions++;
        }
        if (gauge.policy() instanceof Gauge.Policy.Cut) {
            strand.divert(out);
        } else {
            strand.blemish(out);
        }
    }
}
