package spoolyard.core.process;

import spoolyard.core.engine.Engine;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;

/** Takes a task that needs nobody through its stages: a machine does it, at once and at normal pace. */
final class UnattendedWork extends TimedEvent {
    private final Task task;

    UnattendedWork(Engine engine, Task task) {
        super(engine, Phase.FINISH);
        this.task = task;
    }

    void begin() {
        task.assigned(this);
        in(task.arrived());
    }

    @Override
    protected void happen() {
        long ticks = task.nextStage();
        if (ticks == Task.DONE) {
            task.close();
            task.ended();
        } else {
            in(ticks);
        }
    }

    @Override
    public String toString() {
        return task.kind + " that needs nobody";
    }
}
