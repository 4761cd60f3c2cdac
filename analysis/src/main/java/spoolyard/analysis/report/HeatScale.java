package spoolyard.analysis.report;

import java.awt.Color;
import java.util.List;

/** Colours of heat maps, from pale for the least to dark for the most. */
final class HeatScale {
    private static final Color PALE = new Color(0xFBF6E9);
    private static final List<Color> STEPS = List.of(PALE, Palette.STRAW, Palette.CORAL, Palette.RED, Palette.INDIGO);

    private HeatScale() {}

    /**
     * The colour of a value, linear in each channel between the steps.
     *
     * @param share from 0 for the least to 1 for the most
     * @return the colour
     */
    static Color shade(double share) {
        double place = Math.max(0, Math.min(1, share)) * (STEPS.size() - 1);
        int below = Math.min(STEPS.size() - 2, (int) place);
        double part = place - below;
        Color low = STEPS.get(below);
        Color high = STEPS.get(below + 1);
        return new Color(
                mixed(low.getRed(), high.getRed(), part),
                mixed(low.getGreen(), high.getGreen(), part),
                mixed(low.getBlue(), high.getBlue(), part));
    }

    private static int mixed(int low, int high, double part) {
        return (int) Math.round(low + part * (high - low));
    }
}
