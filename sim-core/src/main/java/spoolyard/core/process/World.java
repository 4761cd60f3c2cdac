package spoolyard.core.process;

import spoolyard.core.activity.ActivePeriods;
import spoolyard.core.engine.Engine;
import spoolyard.core.plant.Plant;
import spoolyard.core.random.Streams;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.SwapLog;

/**
 * What every part of a run shares.
 *
 * @param plant the description
 * @param engine the clock and calendar
 * @param streams random streams by name
 * @param log where to tell events
 * @param swaps where to tell spool changes
 * @param active takes down when stations are active
 */
record World(Plant plant, Engine engine, Streams streams, EventLog log, SwapLog swaps, ActivePeriods active) {
    World(Plant plant, Engine engine, Streams streams, EventLog log, SwapLog swaps) {
        this(plant, engine, streams, log, swaps, new ActivePeriods());
    }

    long now() {
        return engine.now();
    }

    void tell(String station, String what, String detail) {
        log.tell(engine.now(), station, what, detail);
    }
}
