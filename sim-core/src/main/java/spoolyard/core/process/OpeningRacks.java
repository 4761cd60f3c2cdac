package spoolyard.core.process;

import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.OpeningSpools;

/** Puts the spools into the racks that stand there when the run starts. */
final class OpeningRacks {
    private final World world;
    private final SpoolRoute route;
    private final SpoolFlow flow;
    private final OrderDesk desk;

    OpeningRacks(World world, SpoolRoute route, SpoolFlow flow, OrderDesk desk) {
        this.world = world;
        this.route = route;
        this.flow = flow;
        this.desk = desk;
    }

    void fill() {
        List<OpeningSpools> all = world.plant().finishing().opening();
        for (int number = 0; number < all.size(); number++) {
            fill(all.get(number), "opening " + (number + 1));
        }
        desk.closeFilled();
    }

    /** What still has to pass the lab is a lot, or several, of its own. */
    private void fill(OpeningSpools some, String name) {
        StationProcess station = route.station(some.station());
        Optional<Campaign> campaign =
                route.isBeforeQuarantine(station) ? LotLuck.of(world, name).map(Campaign::new) : Optional.empty();
        int order = some.order().map(this::placeOf).orElse(Spool.NONE);
        for (int i = 0; i < some.spools(); i++) {
            Spool spool = Spool.atStart(order, some.spoolKg(), some.polymer());
            spool.campaign = campaign;
            campaign.ifPresent(Campaign::spoolMade);
            flow.opened(spool, some.ageS());
            station.rack().keep();
            station.rack().put(spool);
        }
        campaign.ifPresent(Campaign::ends);
    }

    private int placeOf(String id) {
        return desk.orders().stream()
                .filter(run -> run.order.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no order " + id))
                .index;
    }
}
