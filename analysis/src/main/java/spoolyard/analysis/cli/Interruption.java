package spoolyard.analysis.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import spoolyard.analysis.sequence.Stop;

/** While it is open, Ctrl-C ends the search instead of the program, which then goes on to its end. */
final class Interruption implements AutoCloseable {
    private static final long PATIENCE_S = 60;

    private final Thread hook;
    private volatile boolean isEnding;
    private final CountDownLatch isOver = new CountDownLatch(1);

    private final Stop stop;

    private Interruption(Stop stop) {
        this.stop = stop;
        hook = new Thread(() -> {
            isEnding = true;
            stop.ask();
            awaitTheEnd();
        });
    }

    Stop stop() {
        return stop;
    }

    static Interruption asks(Stop stop) {
        Interruption interruption = new Interruption(stop);
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    /** The virtual machine ends when its hooks have: this one holds it until the plan is told and written. */
    private void awaitTheEnd() {
        try {
            isOver.await(PATIENCE_S, TimeUnit.SECONDS);
        } catch (InterruptedException interruption) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        isOver.countDown();
        if (!isEnding) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
    }
}
