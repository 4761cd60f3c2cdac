package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;

/** The orders of a line: the one in hand, and the one that follows it if that is already chosen. */
final class LineOrders {
    private final OrderDesk desk;
    private final Line line;
    private final LineCondition condition;
    private final LineMaterial material;
    private final LineStores stores;
    private Optional<OrderRun> inHand = Optional.empty();
    private Optional<OrderRun> following = Optional.empty();

    LineOrders(OrderDesk desk, Line line, LineCondition condition, LineMaterial material, LineStores stores) {
        this.desk = desk;
        this.line = line;
        this.condition = condition;
        this.material = material;
        this.stores = stores;
    }

    Optional<OrderRun> inHand() {
        return inHand;
    }

    /** Takes the next order if none is in hand; empty if there is none. */
    Optional<OrderRun> inHandOrNext() {
        if (inHand.isEmpty()) {
            inHand = takeNext();
        }
        return inHand;
    }

    /** Takes the next order off the desk without taking it in hand; empty if there is none. */
    Optional<OrderRun> takeNext() {
        Optional<OrderRun> next = following.or(this::choose);
        following = Optional.empty();
        return next;
    }

    private Optional<OrderRun> choose() {
        return desk.next(line, condition.inScrew(), product -> !stores.letExchange() || stores.hasAllFor(product));
    }

    /** Puts back an order that lacks something in store and takes one that lacks nothing; false if there is none. */
    boolean exchange() {
        OrderRun lacking = inHand.orElseThrow();
        if (!stores.letExchange()) {
            return false;
        }
        Optional<OrderRun> other = following.filter(run -> stores.hasAllFor(run.order.product()));
        following = other.isPresent() ? Optional.empty() : following;
        other = other.or(() -> desk.nextThatIsThere(line, condition.inScrew(), stores::hasAllFor));
        other.ifPresent(run -> {
            desk.putBack(lacking);
            inHand = Optional.of(run);
        });
        return other.isPresent();
    }

    void takeInHand(Optional<OrderRun> next) {
        inHand = next;
    }

    boolean isFilled() {
        return inHand.filter(OrderRun::isFilled).isPresent();
    }

    /** Chooses the next order early, so that its material can be prepared while the line runs. */
    void lookAhead() {
        if (material.looksAhead()) {
            following = following.or(this::choose);
            following.ifPresent(run -> material.prepareAhead(run.order.product()));
        }
    }

    /** What the line is to make, or holds. */
    private Optional<Product> product() {
        return inHand.map(run -> run.order.product()).or(condition::inScrew);
    }

    /** What it is to heat for; empty if it has neither an order nor anything in its screw. */
    Optional<Polymer> polymer() {
        return product().map(Product::polymer);
    }

    /** Mass of a metre of what runs to waste, where no strand is in the line to tell. */
    double wasteKgPerM() {
        return product().map(product -> product.filament().kgPerM()).orElse(1.0);
    }
}
