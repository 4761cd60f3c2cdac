package spoolyard.analysis.report;

import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;

/**
 * Cleans up when the program is asked to end (Ctrl-C, a closed terminal), and makes sure that clean-up and the last step
 * of the work never mix: whichever comes first wins.
 */
final class KillGuard implements Closeable {
    private final Object turn = new Object();
    private final Thread hook;
    private boolean isKilled;
    private boolean isOver;

    /**
     * Stands guard from now on.
     *
     * @param cleanUp what to do when the program is asked to end
     */
    KillGuard(Runnable cleanUp) {
        hook = new Thread(() -> kill(cleanUp), "clean-up");
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /**
     * Takes the last step, in one piece.
     *
     * @param step what to do
     * @throws IOException if the step fails, or the program is already ending; the step is then not taken
     */
    void unlessKilled(Step step) throws IOException {
        synchronized (turn) {
            if (isKilled) {
                throw new InterruptedIOException("the program is being ended");
            }
            step.take();
        }
    }

    /** Stands down. */
    @Override
    public void close() {
        synchronized (turn) {
            isOver = true;
            if (!isKilled) {
                standDown();
            }
        }
    }

    private void standDown() {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException endingSinceAMoment) {
            isOver = true;
        }
    }

    private void kill(Runnable cleanUp) {
        synchronized (turn) {
            isKilled = true;
            if (!isOver) {
                cleanUp.run();
            }
        }
    }

    /** A step that can fail. */
    @FunctionalInterface
    interface Step {
        /**
         * Takes it.
         *
         * @throws IOException if it fails
         */
        void take() throws IOException;
    }
}
