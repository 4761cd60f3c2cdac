package spoolyard.analysis.report;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;

/**
 * What the screen can show. Immutable.
 *
 * @param hasColour true: emphasis by ANSI escape sequences; false: plain text
 * @param hasSigns true: signs beyond ASCII
 */
public record Ink(boolean hasColour, boolean hasSigns) {
    /** ASCII only, no emphasis. */
    public static final Ink PLAIN = new Ink(false, false);

    /**
     * For a screen or file in a character set.
     *
     * @param hasColour whether it understands ANSI escape sequences
     * @param charset its character set
     * @return what it can show
     */
    public static Ink of(boolean hasColour, Charset charset) {
        CharsetEncoder encoder = charset.newEncoder();
        return new Ink(hasColour, encoder.canEncode('\u00b1') && encoder.canEncode('\u2013'));
    }

    /**
     * Sign between mean and half-width.
     *
     * @return one to three characters
     */
    String plusMinus() {
        return hasSigns ? "\u00b1" : "+/-";
    }

    /**
     * Sign for a value that is not there.
     *
     * @return one character
     */
    String none() {
        return hasSigns ? "\u2013" : "-";
    }

    /**
     * For headings and the numbers that matter most.
     *
     * @param text any text
     * @return the text, bold where possible
     */
    String strong(String text) {
        return wrapped(text, "1");
    }

    /**
     * For the first words of a screen.
     *
     * @param text any text
     * @return the text, bold where possible
     */
    public String title(String text) {
        return strong(text);
    }

    /**
     * For notes.
     *
     * @param text any text
     * @return the text, fainter where possible
     */
    String faint(String text) {
        return wrapped(text, "2");
    }

    private String wrapped(String text, String code) {
        return hasColour ? "\u001b[" + code + "m" + text + "\u001b[0m" : text;
    }
}
