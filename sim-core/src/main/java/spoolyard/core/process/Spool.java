package spoolyard.core.process;

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
    /** When it came off the winder or through the gate. */
    long madeTick;
    /** When it joined the rack where it now is. */
    long rackedTick;

    Spool(int order, int line, double sizeKg, double massKg, boolean good) {
        this(order, line, sizeKg, massKg, good ? SpoolGrade.GOOD : SpoolGrade.WINDING_DEFECT);
    }

    Spool(int order, int line, double sizeKg, double massKg, SpoolGrade grade) {
        this.order = order;
        this.line = line;
        this.sizeKg = sizeKg;
        this.massKg = massKg;
        this.grade = grade;
    }
}
