package spoolyard.analysis.cli;

import java.io.PrintStream;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import spoolyard.analysis.report.Pictures;
import spoolyard.analysis.report.RunReport;

/** Draws the pictures where Java can draw at all. */
final class Drawing {
    private Drawing() {}

    /**
     * The pictures, or a word about why there are none.
     *
     * @param report what to draw
     * @param err where to say so
     * @return PNG by file name; empty on a Java without fonts or graphics, which some servers have
     */
    static Map<String, byte[]> pictures(RunReport report, PrintStream err) {
        return drawn(() -> Pictures.of(report), err, ", or give --no-charts").orElse(Map.of());
    }

    /**
     * A single picture, or a word about why there is none.
     *
     * @param png draws it
     * @param err where to say so
     * @return PNG; empty on a Java that cannot draw
     */
    static byte[] bytes(Supplier<byte[]> png, PrintStream err) {
        return drawn(png, err, "").orElse(new byte[0]);
    }

    /**
     * A single picture as a results folder takes it, or a word about why there is none.
     *
     * @param file its name
     * @param png draws it
     * @param err where to say so
     * @return PNG by file name; empty on a Java that cannot draw
     */
    static Map<String, byte[]> picture(String file, Supplier<byte[]> png, PrintStream err) {
        return drawn(png, err, ", or give --no-charts")
                .map(drawn -> Map.of(file, drawn))
                .orElse(Map.of());
    }

    private static <T> Optional<T> drawn(Supplier<T> draw, PrintStream err, String orElse) {
        System.setProperty("java.awt.headless", "true");
        try {
            return Optional.of(draw.get());
        } catch (InternalError | LinkageError noGraphics) {
            err.println("No pictures: this Java cannot draw (" + noGraphics + ").\n"
                    + "  Mend: install fontconfig and a font (Debian: fonts-dejavu-core)" + orElse + ".");
            return Optional.empty();
        }
    }
}
