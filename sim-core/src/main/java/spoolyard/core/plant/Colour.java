package spoolyard.core.plant;

/**
 * A colour as the plant's colour file describes it. Immutable.
 *
 * @param code name used in files, for example {@code BLK}
 * @param name name for people
 * @param lightness CIELAB L*, 0 (black) to 100 (white)
 * @param a CIELAB a*
 * @param b CIELAB b*
 * @param shadeClass 1 (light) to 4 (dark)
 * @param pigmentStrength tint strength relative to yellow, {@code > 0}
 * @param concentrateShare colour concentrate in the blend, 0 to 1 by mass
 */
public record Colour(
        String code,
        String name,
        double lightness,
        double a,
        double b,
        int shadeClass,
        double pigmentStrength,
        double concentrateShare) {
    /**
     * CIE 1976 colour difference. Source: CIE 15, Delta E*ab = Euclidean distance in L*a*b*.
     *
     * @param other the other colour
     * @return Delta E*ab, {@code >= 0}
     */
    public double deltaE76(Colour other) {
        double deltaL = lightness - other.lightness;
        double deltaA = a - other.a;
        double deltaB = b - other.b;
        return Math.sqrt(deltaL * deltaL + deltaA * deltaA + deltaB * deltaB);
    }
}
