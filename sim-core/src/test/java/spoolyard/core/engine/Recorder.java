package spoolyard.core.engine;

import java.util.ArrayList;
import java.util.List;

/** Makes events that write their name and instant down. */
final class Recorder {
    final Engine engine = new Engine();
    final List<String> happened = new ArrayList<>();

    TimedEvent event(Phase phase, String name) {
        return event(phase, name, () -> {});
    }

    TimedEvent event(Phase phase, String name, Runnable then) {
        return new TimedEvent(engine, phase) {
            @Override
            protected void happen() {
                happened.add(engine.now() + " " + name);
                then.run();
            }

            @Override
            public String toString() {
                return name;
            }
        };
    }
}
