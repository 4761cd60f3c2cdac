package spoolyard.core.process;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.stream.Stream;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;

/** Keeps a line in dry material: the charge it draws from, and the one that is prepared for its next order. */
final class LineSupply implements Charge.Listener {
    private final World world;
    private final LineProcess line;
    private final Floor floor;
    private final MaterialSupply how;
    private final SupplyTimes times;
    private final Dryer own;
    private Optional<Charge> feeding = Optional.empty();
    private Optional<Charge> ahead = Optional.empty();
    private Optional<Consumer<Dryer>> claim = Optional.empty();
    private double throatKg;
    private double throatKgPerS;
    private long throatTick;

    LineSupply(World world, LineProcess line, Floor floor, MaterialSupply how) {
        this.world = world;
        this.line = line;
        this.floor = floor;
        this.how = how;
        this.times = new SupplyTimes(world, line.description().name(), how);
        this.own = new Dryer(how.hopperKg(), false);
    }

    MaterialSupply how() {
        return how;
    }

    SupplyTimes times() {
        return times;
    }

    LineProcess line() {
        return line;
    }

    Place place() {
        return line.description().place();
    }

    /** Highest rate at which the feeding dryer dries a product. */
    double limitKgPerH(Product product) {
        double heldKg = feeding.map(charge -> charge.dryer().capacityKg).orElse(how.hopperKg());
        return how.limitKgPerH(heldKg, product);
    }

    /** Takes up the material of a product; true if it is dry, false if the line must wait for it. */
    boolean takeUp(Product product) {
        String material = how.materialOf(product);
        if (feeding.isEmpty() && how.startsDry()) {
            feeding = Optional.of(charge(own, product));
            feeding.get().isThere();
        }
        if (feeding.filter(charge -> charge.material().equals(material)).isEmpty()) {
            change(product, material);
        }
        return feeding.orElseThrow().isDry();
    }

    /** Whether its dryer holds some of the material of a product, dry or not. */
    boolean holds(Product product) {
        return feeding.filter(charge -> charge.material().equals(how.materialOf(product)) && !charge.isEmpty())
                .isPresent();
    }

    /** Resin of the store, regrind included, that is in its dryers and not fed yet. */
    double storedKg(String polymer) {
        return Stream.concat(feeding.stream(), ahead.stream())
                        .filter(charge -> charge.polymer().equals(polymer))
                        .mapToDouble(Charge::storedKg)
                        .sum()
                - fromThroatKg(polymer);
    }

    private void change(Product product, String material) {
        Optional<Charge> prepared = ahead.filter(charge -> charge.material().equals(material));
        if (prepared.isEmpty()) {
            giveUpAhead();
        }
        feeding.ifPresent(this::release);
        if (prepared.isPresent()) {
            feeding = prepared;
            ahead = Optional.empty();
        } else {
            feeding = Optional.of(charge(own, product));
            feeding.get().prepare();
        }
    }

    /** Prepares the material of the next order while the line runs, if it differs and a dryer is free for it. */
    void prepareAhead(Product next) {
        String material = how.materialOf(next);
        boolean isFed =
                feeding.filter(charge -> charge.material().equals(material)).isPresent();
        if (isFed || ahead.isPresent() || claim.isPresent()) {
            return;
        }
        if (feeding.filter(charge -> charge.dryer().isMobile).isPresent()) {
            prepareIn(own, next);
        } else {
            Consumer<Dryer> wanted = dryer -> {
                claim = Optional.empty();
                prepareIn(dryer, next);
            };
            claim = Optional.of(wanted);
            floor.dryers().claimDryer(wanted);
        }
    }

    private void prepareIn(Dryer dryer, Product next) {
        ahead = Optional.of(charge(dryer, next));
        ahead.get().prepare();
    }

    private Charge charge(Dryer dryer, Product product) {
        return new Charge(world, floor.desk(), floor.dryers(), floor.stores(), this, dryer, product);
    }

    private void giveUpAhead() {
        claim.ifPresent(floor.dryers()::withdrawClaim);
        claim = Optional.empty();
        ahead.ifPresent(this::release);
        ahead = Optional.empty();
    }

    private void release(Charge charge) {
        charge.end();
        if (charge.dryer().isMobile) {
            floor.dryers().giveBack(charge.dryer());
        }
    }

    void draw(double kgPerS) {
        drawFromThroat(feeding.isPresent() ? 0 : kgPerS);
        feeding.ifPresent(charge -> charge.draw(kgPerS));
    }

    /** A line that begins hot may shut down before it has taken up any material. */
    private void drawFromThroat(double kgPerS) {
        throatKg += throatKgPerS * Ticks.toSeconds(world.now() - throatTick);
        throatKgPerS = kgPerS;
        throatTick = world.now();
    }

    /** Resin that it fed so, booked as of the line's first product; with a loader what is fed comes from the store at once. */
    private double fromThroatKg(String polymer) {
        drawFromThroat(throatKgPerS);
        return line.ledger()
                .materials
                .first()
                .filter(product -> how.batchKg() > 0 && product.polymer().code().equals(polymer))
                .map(product -> throatKg * how.resinShare(product))
                .orElse(0.0);
    }

    /** When what the line waits for is dry; empty while that is not known. */
    OptionalLong dryTick() {
        return feeding.map(Charge::dryTick).orElse(OptionalLong.empty());
    }

    @Override
    public void loaded() {
        line.materialIsLoaded();
    }

    @Override
    public void dry() {
        line.materialIsDry();
    }

    @Override
    public void lacks() {
        line.materialIsDry();
    }

    @Override
    public void ranOut() {
        line.materialRanOut();
    }
}
