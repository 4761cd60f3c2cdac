package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Product;

/**
 * What a line does about its material: takes it up, draws it, and waits for it. A cold line that waits heats meanwhile so as
 * to be hot when the material is dry, as soon as it is known when that will be.
 */
final class LineMaterial {
    private final World world;
    private final LineProcess line;
    private final LineCondition condition;
    private final Heating heating;
    private final Optional<LineSupply> supply;
    private final TimedEvent heatUp;
    private Optional<Product> wanted = Optional.empty();

    LineMaterial(World world, LineProcess line, Floor floor, LineCondition condition, Heating heating) {
        this.world = world;
        this.line = line;
        this.condition = condition;
        this.heating = heating;
        this.supply = line.description().supply().map(how -> new LineSupply(world, line, floor, how));
        this.heatUp = new TimedEvent(world.engine(), Phase.SIGNAL) {
            @Override
            protected void happen() {
                if (isWaitingCold()) {
                    line.hours().heatUp();
                }
            }

            @Override
            public String toString() {
                return "line " + line.description().name() + " heats for its material";
            }
        };
    }

    /** Where its dry material comes from; empty if that is always there. */
    Optional<LineSupply> supply() {
        return supply;
    }

    /** Takes up the material of a product; true if it is dry, false if the line must wait for it. */
    boolean takeUp(Product product) {
        wanted = Optional.of(product);
        return supply.isEmpty() || supply.get().takeUp(product);
    }

    /** The line waits, or what it waits for has been loaded. */
    void heatMeanwhile() {
        if (isWaitingCold()) {
            supply.orElseThrow()
                    .dryTick()
                    .ifPresent(tick -> heatUp.moveTo(
                            heating.latestStart(wanted.orElseThrow().polymer(), tick)));
        }
    }

    private boolean isWaitingCold() {
        return line.isWaitingForMaterial() && !condition.isHot();
    }

    /** Whether the next order is chosen early, so that its material can be prepared while the line runs. */
    boolean looksAhead() {
        return supply.isPresent() && world.plant().drying().looksAhead();
    }

    void prepareAhead(Product next) {
        supply.ifPresent(source -> source.prepareAhead(next));
    }

    /** Rate with a product: that of the line, or what its dryer can dry. */
    double rateKgPerH(Product product) {
        double byLine = line.description().rateKgPerH(product);
        return supply.isEmpty() ? byLine : Math.min(byLine, supply.get().limitKgPerH(product));
    }

    void draw(double kgPerS) {
        supply.ifPresent(source -> source.draw(kgPerS));
    }
}
