package spoolyard.analysis.report;

import java.awt.Color;
import spoolyard.core.colour.CieLab;
import spoolyard.core.colour.Srgb;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Colour;

/** A colour of the plant as a screen shows it. */
final class Swatch {
    private static final double DARK = 120;

    private Swatch() {}

    /**
     * The nearest that a screen can show.
     *
     * @param colour a colour
     * @param viewing light of its L*a*b*
     * @return the same for a screen
     */
    static Color of(Colour colour, Viewing viewing) {
        Srgb shown = Srgb.of(new CieLab(colour.lightness(), colour.a(), colour.b()), viewing);
        return new Color(shown.red(), shown.green(), shown.blue());
    }

    /**
     * What can be read upon it.
     *
     * @param ground a colour
     * @return white on a dark ground, else the colour of text
     */
    static Color inkOn(Color ground) {
        double light = 0.2126 * ground.getRed() + 0.7152 * ground.getGreen() + 0.0722 * ground.getBlue();
        return light < DARK ? Color.WHITE : Palette.TEXT;
    }
}
