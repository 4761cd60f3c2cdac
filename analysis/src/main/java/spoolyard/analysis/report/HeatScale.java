package spoolyard.analysis.report;

import java.awt.Color;
import java.util.List;

/** Colours of heat maps, from pale for the least to dark for the most. */
final class HeatScale {
    private static final Color PALE = new Color(0xFBF6E9);
    private static final List<Color> STEPS = List.of(PALE, Palette.STRAW, Palette.CORAL, Palette.RED, Palette.INDIGO);
    private static final double DARK = 120;

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

    /**
     * The colour of text that can be read.
     *
     * @param ground what it stands on
     * @return white or dark
     */
    static Color inkOn(Color ground) {
        double light = 0.2126 * ground.getRed() + 0.7152 * ground.getGreen() + 0.0722 * ground.getBlue();
        return light < DARK ? Color.WHITE : Palette.TEXT;
    }

    private static int mixed(int low, int high, double part) {
        return (int) Math.round(low + part * (high - low));
    }
}
