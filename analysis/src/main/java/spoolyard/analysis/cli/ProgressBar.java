package spoolyard.analysis.cli;

import java.io.PrintStream;
import java.util.Locale;
import spoolyard.analysis.experiment.Progress;

/** Shows on a terminal how far an experiment has come; leaves no trace when it is done. */
final class ProgressBar implements Progress {
    private static final int WIDTH = 40;
    private static final int HUNDRED = 100;

    private final PrintStream err;
    private int shownLength;
    private String width = "";

    /**
     * On a terminal.
     *
     * @param err standard error
     */
    private ProgressBar(PrintStream err) {
        this.err = err;
    }

    /**
     * A bar where somebody watches, silence elsewhere.
     *
     * @param console where to
     * @return hears of progress
     */
    static Progress on(Console console) {
        return console.isErrTerminal() ? new ProgressBar(console.err()) : UNHEARD;
    }

    @Override
    public void reached(int done, int total) {
        if (done == total) {
            clear();
            return;
        }
        int full = (int) ((long) WIDTH * done / total);
        String bar = "[" + "#".repeat(full) + ".".repeat(WIDTH - full) + "]  " + done + " of " + total + " replications"
                + width;
        err.print("\r" + bar + " ".repeat(Math.max(0, shownLength - bar.length())));
        err.flush();
        shownLength = bar.length();
    }

    private void clear() {
        if (shownLength > 0) {
            err.print("\r" + " ".repeat(shownLength) + "\r");
            err.flush();
            shownLength = 0;
        }
    }

    @Override
    public void narrowed(double newWidth) {
        width = Double.isNaN(newWidth) ? "" : String.format(Locale.ROOT, ", now +/- %.2f %%", HUNDRED * newWidth);
    }
}
