package spoolyard.analysis.cli;

import java.io.PrintStream;
import java.util.Map;
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
        System.setProperty("java.awt.headless", "true");
        try {
            return Pictures.of(report);
        } catch (InternalError | LinkageError noGraphics) {
            err.println("No pictures: this Java cannot draw (" + noGraphics + ").\n"
                    + "  Mend: install fontconfig and a font (Debian: fonts-dejavu-core), or give --no-charts.");
            return Map.of();
        }
    }
}
