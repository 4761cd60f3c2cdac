package spoolyard.analysis.cli;

import spoolyard.analysis.sequence.Stop;

/**
 * While it is open, the first Ctrl-C ends the search instead of the program, which then goes on to its end. Whatever else asks
 * the program to end meanwhile, a second Ctrl-C or the end of the terminal, ends the search too, and the program when this is
 * closed: the plan is told and written by then. A third ends it at once.
 */
final class Interruption implements AutoCloseable {
    private final Stop stop;
    private final Signals signals;
    private boolean endsSearchOnly;
    private boolean isClosed;
    private String held = "";

    private Interruption(Stop stop, boolean endsSearchOnly) {
        this.stop = stop;
        this.endsSearchOnly = endsSearchOnly;
        signals = Signals.to(this::heard);
    }

    Stop stop() {
        return stop;
    }

    static Interruption asks(Stop stop) {
        return new Interruption(stop, true);
    }

    /** Makes the end of the program wait until this is closed; for the moments in which files are written. */
    static Interruption waits() {
        return new Interruption(new Stop(), false);
    }

    /** A signal on its way when this was closed is sent on: to what was open before, or to end the program. */
    private synchronized void heard(String signal) {
        stop.ask();
        if (isClosed) {
            Signals.send(signal);
        } else if (endsSearchOnly && signal.equals("INT")) {
            endsSearchOnly = false;
        } else if (held.isEmpty()) {
            held = signal;
        } else {
            close();
        }
    }

    /** May be called again. */
    @Override
    public synchronized void close() {
        isClosed = true;
        signals.release();
        if (!held.isEmpty()) {
            String now = held;
            held = "";
            Signals.send(now);
        }
    }
}
