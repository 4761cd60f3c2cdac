package spoolyard.core.process;

import java.util.Optional;
import java.util.function.ObjDoubleConsumer;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Product;
import spoolyard.core.record.LineState;
import spoolyard.core.record.ScrapCause;

/** A line while it makes product: at what rate, on which strands, slowed or not. */
final class Making {
    private final LineProcess process;
    private final Line line;
    private final StrandGroup strands;
    private final LineClock clock;
    private final ObjDoubleConsumer<Boolean> stoppageClocks;
    private Optional<Product> onStrands = Optional.empty();
    private double kgPerS;
    private double speedShare = 1;
    private boolean on;
    private boolean slowed;

    Making(LineProcess process, StrandGroup strands, LineClock clock, ObjDoubleConsumer<Boolean> stoppageClocks) {
        this.process = process;
        this.line = process.description();
        this.strands = strands;
        this.clock = clock;
        this.stoppageClocks = stoppageClocks;
    }

    boolean isOn() {
        return on;
    }

    /** What the strands are set up for. */
    Product product() {
        return onStrands.orElseThrow();
    }

    /** Whether the strands are set up for a product. */
    boolean isSetUpFor(Product product) {
        return onStrands.filter(product::equals).isPresent();
    }

    /** Rate of the product at full speed. */
    double kgPerS() {
        return kgPerS;
    }

    /** The strands take up a product; they stay as they are if it is on them. */
    void begin(Product product, double rateKgPerH) {
        if (!isSetUpFor(product)) {
            strands.setUp(product, line.overlength());
            onStrands = Optional.of(product);
        }
        kgPerS = rateKgPerH / 3600;
        on = true;
        feed();
        show();
    }

    /** Makes no more; what is on the strands stays. */
    void end() {
        on = false;
    }

    /** Nothing is on the strands. */
    void clear() {
        onStrands = Optional.empty();
    }

    private void feed() {
        speedShare = 1;
        double scrapShare = 0;
        if (slowed && line.overflow() instanceof OverflowPolicy.Slow slow) {
            speedShare = slow.minimumSpeedShare();
            scrapShare = slow.scrapShare();
        }
        Product product = product();
        strands.feedProduct(speedShare * kgPerS, product.filament().kgPerM(), scrapShare);
        process.draw(speedShare * kgPerS);
        clock.rates(line.rateKgPerH(product) / 3600, speedShare * kgPerS);
    }

    void slowingChanged() {
        boolean any = strands.isAnySlowing();
        if (any != slowed) {
            slowed = any;
            if (on) {
                feed();
                show();
            }
        }
    }

    /** Shows on the clocks what the line makes. */
    private void show() {
        setClocks();
        if (strands.isAnyOnProduct()) {
            clock.enter(slowed ? LineState.SLOWED : LineState.RUNNING);
        } else {
            process.enter(strands.isAnyRepairAttended() ? LineState.DOWN : LineState.WAITING_FOR_CREW);
        }
    }

    void setClocks() {
        stoppageClocks.accept(on, kgPerS * speedShare);
        strands.setClocks(on, kgPerS * speedShare);
    }

    /** A strand has broken; the others go on. */
    void strandBroke(StrandRepair repair) {
        Strand strand = repair.strand();
        if (!on || strands.isUnderRepair(strand)) {
            repair.clock().fixed();
            return;
        }
        process.tell("strand", repair.clock().cause().name());
        strands.cut(strand, ScrapCause.SHORT_SPOOL);
        double kgPerM = product().filament().kgPerM();
        strand.feedWaste(kgPerS * speedShare / line.strands(), kgPerM, ScrapCause.STOPPAGE);
        repair.start();
        strandRepairChanged();
    }

    void strandRepairChanged() {
        if (on) {
            show();
        }
    }

    void strandRepaired(Strand strand) {
        strands.threadedUp(strand);
        if (on) {
            feed();
            show();
        }
    }
}
