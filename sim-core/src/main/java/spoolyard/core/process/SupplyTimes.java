package spoolyard.core.process;

import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.random.Variate;

/** How long a line's material work takes each time. */
final class SupplyTimes {
    private final Variate load;
    private final Variate clean;

    SupplyTimes(World world, String line, MaterialSupply how) {
        this.load = world.streams().variate(how.loadS(), "line " + line + " / loading material");
        this.clean = world.streams().variate(how.cleanS(), "line " + line + " / cleaning the dryer");
    }

    long loadTicks() {
        return load.nextTicks();
    }

    long cleanTicks() {
        return clean.nextTicks();
    }
}
