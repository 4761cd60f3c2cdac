package spoolyard.core.colour;

/**
 * What the surface of a plastic does to the light. Immutable.
 *
 * <p>Source: J. L. Saunderson, Calculation of the color of pigmented plastics, J. Opt. Soc. Am. 32 (1942) 727-736.
 *
 * @param outside share of the light that the surface throws back before it enters, k1, in [0, 1)
 * @param inside share that it throws back into the plastic, k2, in [0, 1)
 */
public record Saunderson(double outside, double inside) {
    /** No surface: what is measured is what the pigments throw back. */
    public static final Saunderson NONE = new Saunderson(0, 0);

    /**
     * What an instrument sees, specular light included.
     *
     * @param internal reflectance within the plastic, in [0, 1]
     * @return measured reflectance
     */
    public double measured(double internal) {
        return outside + (1 - outside) * (1 - inside) * internal / (1 - inside * internal);
    }

    /**
     * The inverse.
     *
     * @param measured measured reflectance, in [{@code outside}, 1]
     * @return reflectance within the plastic; below zero if less is measured than the surface alone throws back
     */
    public double internal(double measured) {
        double beyond = measured - outside;
        return beyond / ((1 - outside) * (1 - inside) + inside * beyond);
    }
}
