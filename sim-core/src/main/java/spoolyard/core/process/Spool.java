package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;

/** A full spool on its way from the winder, or from outside, to the pallet. */
final class Spool {
    /** Marks a spool that belongs to no order or comes from no line. */
    static final int NONE = -1;

    /** Place of its order in the book, or {@link #NONE}. */
    final int order;
    /** Place of its line in the plant, or {@link #NONE}. */
    final int line;
    /** Nominal net mass, which decides cycle and carton, kg. */
    final double sizeKg;
    /** Mass of filament really on it, kg. */
    final double massKg;
    /** What becomes of it. */
    final SpoolGrade grade;
    /** What a line made it of; empty if it comes from no line. */
    final Optional<Product> product;
    /** Its polymer; empty if that is not known. */
    final Optional<Polymer> polymer;
    /** How long it may stand in moist air; {@link Ticks#NEVER} if there is no limit. */
    private final long exposureLimitTicks;
    /** What was made with it in one go; empty if no lab looks at it. */
    Optional<Campaign> campaign = Optional.empty();
    /** The lot it is in, from quarantine on. */
    Optional<Lot> lot = Optional.empty();
    /** The colour judgement for which it is held; empty if its colour is approved or nobody asks. */
    Optional<ColourHold> hold = Optional.empty();
    /** Whether it has a defect that only the lab can see. */
    boolean defective;
    /** Whether it was flagged by the gauge and the lab will reject it. */
    boolean condemned;
    /** When it began to stand in moist air. */
    long exposedTick;
    /** Its number among those that came to the rack where it now is. */
    long arrival;
    /** How often a cycle takes its time for it. */
    int rounds = 1;
    /** When it came off the winder or through the gate. */
    long madeTick;
    /** When it joined the rack where it now is. */
    long rackedTick;
    /** Where it lies on the {@link Shelf} that it is on. */
    int shelfPlace;

    private Spool(
            int order,
            int line,
            double sizeKg,
            double massKg,
            SpoolGrade grade,
            Optional<Product> product,
            Optional<Polymer> polymer) {
        this.order = order;
        this.line = line;
        this.sizeKg = sizeKg;
        this.massKg = massKg;
        this.grade = grade;
        this.product = product;
        this.polymer = polymer;
        this.exposureLimitTicks = polymer.isPresent() ? limitTicks(polymer.get()) : Ticks.NEVER;
    }

    private static long limitTicks(Polymer polymer) {
        double limitS = polymer.exposureLimitS();
        return limitS == Double.POSITIVE_INFINITY ? Ticks.NEVER : Ticks.ofSeconds(limitS);
    }

    /** Full, off the winder of a line. */
    static Spool full(int order, int line, Product product, double massKg, SpoolGrade grade) {
        Optional<Polymer> polymer = Optional.of(product.polymer());
        return new Spool(order, line, product.spoolKg(), massKg, grade, Optional.of(product), polymer);
    }

    /** Cut short by the gauge of a line. */
    static Spool cutShort(int line, Product product, double massKg) {
        Optional<Polymer> polymer = Optional.of(product.polymer());
        return new Spool(NONE, line, massKg, massKg, SpoolGrade.CUT_SHORT, Optional.of(product), polymer);
    }

    /** Not off one of the lines. */
    static Spool fromOutside(double kg, Optional<Polymer> polymer) {
        return new Spool(NONE, NONE, kg, kg, SpoolGrade.GOOD, Optional.empty(), polymer);
    }

    /** In a rack when the run starts. */
    static Spool atStart(int order, double kg, Optional<Polymer> polymer) {
        return new Spool(order, NONE, kg, kg, SpoolGrade.GOOD, Optional.empty(), polymer);
    }

    /** When its exposure clock runs out; {@link Ticks#NEVER} if it has no limit. */
    long deadlineTick() {
        return exposureLimitTicks == Ticks.NEVER ? Ticks.NEVER : exposedTick + exposureLimitTicks;
    }
}
