package spoolyard.analysis.cli;

import java.io.PrintStream;
import java.util.Locale;

/** Shows on a terminal how far a search has come; leaves no trace when it is done. */
final class SearchLine {
    private final PrintStream err;
    private final boolean isSeen;
    private int shownLength;

    SearchLine(Console console) {
        err = console.err();
        isSeen = console.isErrTerminal();
    }

    void show(double cost, double bound, double share) {
        show(String.format(Locale.ROOT, "searching, %.0f %% done: cost %.0f, bound %.0f", 100 * share, cost, bound));
    }

    void plans(int plans, double share) {
        show(String.format(Locale.ROOT, "searching, %.0f %% done: %d plans", 100 * share, plans));
    }

    /** Replications to learn from, of so many at most. */
    void learning(int done, int most) {
        show(String.format(Locale.ROOT, "learning, %d of %d replications", done, most));
    }

    void bounding() {
        show("raising the bound");
    }

    private void show(String text) {
        if (isSeen) {
            err.print("\r" + text + " ".repeat(Math.max(0, shownLength - text.length())));
            err.flush();
            shownLength = text.length();
        }
    }

    void clear() {
        if (isSeen) {
            err.print("\r" + " ".repeat(shownLength) + "\r");
            err.flush();
        }
    }
}
