package spoolyard.core.process;

/** A dryer hopper: a line's own or one on wheels. Remembers what was in it last. */
final class Dryer {
    final double capacityKg;
    final boolean isMobile;
    private String lastMaterial = "";

    Dryer(double capacityKg, boolean isMobile) {
        this.capacityKg = capacityKg;
        this.isMobile = isMobile;
    }

    boolean mustBeCleanedFor(String material) {
        return !lastMaterial.isEmpty() && !lastMaterial.equals(material);
    }

    void holds(String material) {
        lastMaterial = material;
    }
}
