package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Finishing;
import spoolyard.core.random.Variate;
import spoolyard.core.record.RunResult.InboundResult;

/** Spools that come from outside, one at a time; one that finds the rack full goes back. */
final class InboundProcess {
    private final Finishing.Inbound description;
    private final Rack rack;
    private final SpoolFlow flow;
    private final Variate interval;
    private final TimedEvent arrival;
    private final Optional<Campaign> campaign;
    private long arrived;
    private long turnedAway;

    InboundProcess(World world, Finishing.Inbound description, Rack rack, SpoolFlow flow) {
        this.description = description;
        this.rack = rack;
        this.flow = flow;
        this.interval =
                world.streams().variate(description.intervalS(), "inbound " + description.name() + " / interval");
        this.campaign = LotLuck.of(world, "inbound " + description.name()).map(Campaign::new);
        this.arrival = new TimedEvent(world.engine(), Phase.ARRIVAL) {
            @Override
            protected void happen() {
                arrive();
                in(interval.nextTicks());
            }

            @Override
            public String toString() {
                return "inbound " + description.name();
            }
        };
    }

    void start() {
        arrival.in(interval.nextTicks());
    }

    private void arrive() {
        arrived++;
        if (!rack.hasRoom()) {
            turnedAway++;
            return;
        }
        Spool spool = Spool.fromOutside(description.spoolKg(), description.polymer());
        spool.campaign = campaign;
        campaign.ifPresent(Campaign::spoolMade);
        flow.accepted(spool);
        rack.keep();
        rack.put(spool);
    }

    InboundResult result() {
        return new InboundResult(description.name(), arrived, turnedAway);
    }
}
