package spoolyard.core.process;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.Winder;
import spoolyard.core.record.ScrapCause;

/** The strands of a line with their winders and repairs, fed in equal shares. */
final class StrandGroup {
    private final World world;
    private final LineProcess process;
    private final Floor floor;
    private final List<Strand> strands = new ArrayList<>();
    private final List<AbstractSpindle> spindles = new ArrayList<>();
    private final List<StrandRepair> repairs = new ArrayList<>();
    private final List<StrandGauge> gauges = new ArrayList<>();
    private final boolean[] freshlyThreaded;

    StrandGroup(World world, LineProcess process, Floor floor) {
        this.world = world;
        this.process = process;
        this.floor = floor;
        Line line = process.description();
        this.freshlyThreaded = new boolean[line.strands()];
        for (int number = 1; number <= line.strands(); number++) {
            add(number);
        }
    }

    private void add(int number) {
        Line line = process.description();
        String name = Strand.nameOf(line, number);
        Strand strand = new Strand(world, process, process.ledger(), number);
        AbstractSpindle spindle = line.winder() instanceof Winder.Manual
                ? new ManualSpindle(world, floor.desk(), floor.rack(), process, strand, name)
                : new TwoPositionSpindle(world, floor.desk(), floor.rack(), process, strand, name);
        strand.attach(spindle);
        strands.add(strand);
        spindles.add(spindle);
        line.gauge().ifPresent(gauge -> gauges.add(new StrandGauge(world, process, strand, gauge, name)));
        for (Stoppage cause : line.stoppages()) {
            if (cause.scope() == Stoppage.Scope.STRAND) {
                repairs.add(new StrandRepair(world, floor.desk(), process, strand, name, cause));
            }
        }
    }

    List<Strand> strands() {
        return strands;
    }

    List<AbstractSpindle> spindles() {
        return spindles;
    }

    List<StrandRepair> repairs() {
        return repairs;
    }

    void setUp(Product product, double overlength) {
        for (Strand strand : strands) {
            strand.setUp(product, overlength);
        }
        gauges.forEach(gauge -> gauge.makes(product));
    }

    /** Product on all strands that are not being repaired; those run to waste at the same speed. */
    void feedProduct(double kgPerS, double kgPerM, double scrapShare) {
        for (Strand strand : strands) {
            if (isUnderRepair(strand)) {
                strand.feedWaste(kgPerS / strands.size(), kgPerM, ScrapCause.STOPPAGE);
            } else {
                strand.feedProduct(kgPerS / strands.size() / kgPerM, scrapShare);
            }
        }
    }

    void feedWaste(Step.Waste waste, double kgPerM) {
        for (Strand strand : strands) {
            if (waste.kgPerS() > 0) {
                strand.feedStepWaste(waste.kgPerS() / strands.size(), kgPerM, waste.cause());
            } else {
                strand.stopFeed();
            }
        }
    }

    /** What passes the die of all strands. */
    double dieKgPerS() {
        double sum = 0;
        for (Strand strand : strands) {
            sum += strand.dieKgPerS();
        }
        return sum;
    }

    void stopFeed() {
        strands.forEach(Strand::stopFeed);
    }

    /** Cuts all strands and gives up their repairs. */
    void cut(ScrapCause cause) {
        repairs.forEach(StrandRepair::abort);
        strands.forEach(strand -> cut(strand, cause));
    }

    /** Cuts one strand. */
    void cut(Strand strand, ScrapCause cause) {
        strand.cut(cause);
        if (!gauges.isEmpty()) {
            gauges.get(strands.indexOf(strand)).reset();
        }
    }

    /** Books the time out of tolerance up to now. */
    void countExcursions() {
        gauges.forEach(StrandGauge::count);
    }

    void advance() {
        for (Strand strand : strands) {
            strand.advance();
        }
    }

    /** Sets the clocks of the strands' stoppages and excursions. */
    void setClocks(boolean making, double kgPerS) {
        for (StrandRepair repair : repairs) {
            boolean onProduct = making && repair.strand().isOnProduct();
            repair.clock().station(onProduct, kgPerS / strands.size());
        }
        for (int i = 0; i < gauges.size(); i++) {
            gauges.get(i).station(making && strands.get(i).isOnProduct());
        }
    }

    void threadedUp() {
        Arrays.fill(freshlyThreaded, true);
    }

    void threadedUp(Strand strand) {
        freshlyThreaded[strands.indexOf(strand)] = true;
    }

    /** Whether a spool is the first of its strand after a thread-up; asking settles it. */
    boolean isFirstAfterThreadUp(Strand strand) {
        int number = strands.indexOf(strand);
        boolean first = freshlyThreaded[number];
        freshlyThreaded[number] = false;
        return first;
    }

    boolean isAnyOnProduct() {
        for (Strand strand : strands) {
            if (strand.isOnProduct()) {
                return true;
            }
        }
        return false;
    }

    /** Whether every strand on product loses all of it to a full accumulator. */
    boolean isAllOverflowing() {
        boolean isAny = false;
        for (Strand strand : strands) {
            if (strand.isOnProduct() && !strand.isOverflowing()) {
                return false;
            }
            isAny |= strand.isOverflowing();
        }
        return isAny;
    }

    boolean isAnySlowing() {
        for (Strand strand : strands) {
            if (strand.isSlowing()) {
                return true;
            }
        }
        return false;
    }

    boolean isAnyRepairAttended() {
        for (StrandRepair repair : repairs) {
            if (repair.isAttended()) {
                return true;
            }
        }
        return false;
    }

    boolean areWindersReady() {
        for (AbstractSpindle spindle : spindles) {
            if (!spindle.isReady()) {
                return false;
            }
        }
        return true;
    }

    boolean isUnderRepair(Strand strand) {
        for (StrandRepair repair : repairs) {
            if (repair.strand() == strand && repair.isRunning()) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether a strand stands with an empty spool on although it is fed, is not fed although it is whole, or has a full
     * spool that nobody will come for.
     */
    boolean isStuck(boolean making) {
        for (AbstractSpindle spindle : spindles) {
            if (spindle.isForgotten()) {
                return true;
            }
        }
        for (Strand strand : strands) {
            boolean fed = strand.isOnProduct();
            if (making && !fed && !isUnderRepair(strand) || fed && strand.isStanding() && strand.isWinderReady()) {
                return true;
            }
        }
        return false;
    }
}
