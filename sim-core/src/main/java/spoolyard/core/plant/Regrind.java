package spoolyard.core.plant;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What becomes of clean scrap: it is ground and fed again, in place of natural resin, to dark colours of the same polymer.
 * Immutable.
 *
 * <p>It passes once: scrap of a product that takes regrind is never ground. Nor is what a change of colour or polymer, or a
 * refused colour, runs to waste: it holds a share of the product before that nobody knows, which may have taken regrind or be
 * another polymer. Source: same polymer into black only, at most 10 %, one pass, not of PA, PC and TPU (common practice, no
 * source).
 *
 * @param polymers codes of the polymers that are ground
 * @param takers codes of the colours that take regrind of their polymer
 * @param share most of it in the natural part of the blend, in (0, 1] by mass; all of it while there is some
 * @param scrap what is ground
 * @param grinding how
 * @param openingKg in store at the start, by polymer code, kg; 0 for those not named
 */
public record Regrind(
        List<String> polymers,
        List<String> takers,
        double share,
        List<Scrap> scrap,
        Grinding grinding,
        Map<String, Double> openingKg) {
    /** Scrap of one product, by how it comes about. */
    public enum Scrap {
        /** Run to waste at a start, a shut-down or a stoppage. */
        STARTS,
        /** Cut off or let go while product is made: short spools, order tails, overflow, out of tolerance. */
        STRANDS,
        /** Full spools that are rejected, refused or spoilt. */
        SPOOLS
    }

    /** Checks the share and copies the collections. */
    public Regrind {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("share of regrind = " + share + ". Must be in (0, 1].");
        }
        polymers = List.copyOf(polymers);
        takers = List.copyOf(takers);
        scrap = List.copyOf(scrap);
        openingKg = Collections.unmodifiableMap(new LinkedHashMap<>(openingKg));
    }

    /**
     * How scrap is ground.
     *
     * @param batchKg it is ground as soon as this much of a polymer has come together, kg, {@code > 0}
     * @param dust share of it that is lost, in [0, 1)
     * @param roomKg most regrind of a polymer in store, kg; a batch that finds less room is sold as scrap. Infinity for no
     *     limit
     */
    public record Grinding(double batchKg, double dust, double roomKg) {
        /** Checks the ranges. */
        public Grinding {
            if (!(batchKg > 0 && dust >= 0 && dust < 1 && roomKg >= 0)) {
                throw new IllegalArgumentException("batch = " + batchKg + " kg, dust = " + dust + ", room = " + roomKg
                        + " kg. Must be > 0, in [0, 1) and >= 0.");
            }
        }
    }

    /**
     * Whether a product takes regrind.
     *
     * @param product the product
     * @return true if its polymer is ground and its colour takes it
     */
    public boolean isTakenBy(Product product) {
        return isGround(product) && takers.contains(product.colour().code());
    }

    /**
     * Whether clean scrap of a product is ground.
     *
     * @param product the product
     * @return true if its polymer is ground and it takes no regrind itself
     */
    public boolean isGivenBy(Product product) {
        return isGround(product) && !takers.contains(product.colour().code());
    }

    private boolean isGround(Product product) {
        return polymers.contains(product.polymer().code());
    }
}
