package spoolyard.analysis.report;

import java.awt.Color;
import java.util.List;

/**
 * Colours of the pictures. Chosen so that any two are at least 20 apart in CIE 1976 colour difference for normal sight,
 * protanopia, deuteranopia and tritanopia alike.
 */
final class Palette {
    static final Color PETROL = new Color(0x076680);
    static final Color SKY = new Color(0x4FACE6);
    static final Color MUSTARD = new Color(0xDFA30A);
    static final Color STRAW = new Color(0xF7DF84);
    static final Color RED = new Color(0xBB1320);
    static final Color INDIGO = new Color(0x39347E);
    static final Color CORAL = new Color(0xFD8378);
    static final Color VIOLET = new Color(0x9A3FD5);
    static final Color STONE = new Color(0x9997AD);
    static final Color MIST = new Color(0xE8EBEE);

    /** All of them. */
    static final List<Color> ALL = List.of(PETROL, SKY, MUSTARD, STRAW, RED, INDIGO, CORAL, VIOLET, STONE, MIST);

    /** For series drawn as thin lines and dots on white. */
    static final List<Color> SERIES = List.of(PETROL, MUSTARD, INDIGO, CORAL, SKY, RED, STONE);

    static final Color TEXT = new Color(0x262B33);
    static final Color FAINT_TEXT = new Color(0x5E6672);
    static final Color GRID = new Color(0xDDE1E6);

    private Palette() {}
}
