package spoolyard.core.process;

import java.util.List;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Place;

/** Takes a line through a list of steps, calling people where a step needs them. */
final class Program {
    /** Who is told how far it is. */
    interface Listener {
        /** A step waits for its crew. */
        void stepWaits(Step step);

        /** A step begins. */
        void stepBegins(Step step, long waitedTicks);

        /** A step is over. */
        void stepEnds(Step step);

        /** All steps are over. */
        void programEnds();
    }

    private final World world;
    private final CrewDesk desk;
    private final Listener listener;
    private final int line;
    private final Place place;
    private final TimedEvent timer;
    private List<Step> steps = List.of();
    private int at;
    private Task task;

    Program(World world, CrewDesk desk, Listener listener, int line, Place place, String name) {
        this.world = world;
        this.desk = desk;
        this.listener = listener;
        this.line = line;
        this.place = place;
        this.timer = new TimedEvent(world.engine(), Phase.FINISH) {
            @Override
            protected void happen() {
                stepOver();
            }

            @Override
            public String toString() {
                return name + " step ends";
            }
        };
    }

    boolean isRunning() {
        return at < steps.size();
    }

    /** Whether the present step waits for its crew. */
    boolean isWaiting() {
        return task != null && task.isWaiting();
    }

    void run(List<Step> itsSteps) {
        if (isRunning()) {
            throw new IllegalStateException("a line can't begin " + itsSteps + " during " + steps.get(at));
        }
        steps = itsSteps;
        at = 0;
        beginStep();
    }

    /** Gives up the rest. */
    void abort() {
        steps = List.of();
        at = 0;
        timer.cancel();
        if (task != null) {
            Task dropped = task;
            task = null;
            desk.withdraw(dropped);
        }
    }

    private void beginStep() {
        if (!isRunning()) {
            listener.programEnds();
            return;
        }
        Step step = steps.get(at);
        if (step.crew().isNobody()) {
            listener.stepBegins(step, 0);
            timer.in(step.ticks());
        } else {
            listener.stepWaits(step);
            task = new StepTask(step);
            desk.raise(task);
        }
    }

    private void stepOver() {
        Step step = steps.get(at);
        at++;
        listener.stepEnds(step);
        beginStep();
    }

    private final class StepTask extends Task {
        private final Step step;

        StepTask(Step step) {
            super(step.kind(), desk.rolesOf(step.crew()), Program.this.line, Program.this.place);
            this.step = step;
        }

        @Override
        long begin() {
            listener.stepBegins(step, world.now() - raisedTick());
            return step.ticks();
        }

        @Override
        long nextStage() {
            return DONE;
        }

        @Override
        void interrupted() {
            listener.stepWaits(step);
        }

        @Override
        void resumed() {
            listener.stepBegins(step, 0);
        }

        @Override
        void ended() {
            task = null;
            stepOver();
        }
    }
}
