package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;

/** The order that a line makes, and the one it makes next. */
final class LineOrders {
    private final World world;
    private final Line line;
    private final Floor floor;
    private final LineCondition condition;
    private final LineStores stores;
    private Optional<OrderRun> current = Optional.empty();
    private Optional<OrderRun> following = Optional.empty();

    LineOrders(World world, Line line, Floor floor, LineCondition condition, LineStores stores) {
        this.world = world;
        this.line = line;
        this.floor = floor;
        this.condition = condition;
        this.stores = stores;
    }

    Optional<OrderRun> current() {
        return current;
    }

    /** Takes the next order off the book, if there is one. */
    Optional<OrderRun> next() {
        Optional<OrderRun> next = following.or(this::choose);
        following = Optional.empty();
        return next;
    }

    /** From now on it is this one. */
    void goOnWith(Optional<OrderRun> order) {
        current = order;
    }

    private Optional<OrderRun> choose() {
        return floor.orders().next(line, condition.inScrew(), this::isThere);
    }

    private boolean isThere(Product product) {
        return !floor.stores().letsExchange() || stores.hasAllFor(product);
    }

    /** Chooses the next order early, so that its material can be prepared while the line runs. */
    void lookAhead(LineSupply supply) {
        if (world.plant().drying().looksAhead()) {
            following = following.or(this::choose);
            following.ifPresent(run -> supply.prepareAhead(run.order.product()));
        }
    }

    /** Puts back an order that lacks something in store and takes one that lacks nothing; false if there is none. */
    boolean exchange() {
        OrderRun lacking = current.orElseThrow();
        if (!floor.stores().letsExchange()) {
            return false;
        }
        Optional<OrderRun> other = following.filter(run -> stores.hasAllFor(run.order.product()));
        following = other.isPresent() ? Optional.empty() : following;
        other = other.or(() -> floor.orders().nextThatIsThere(line, condition.inScrew(), stores::hasAllFor));
        other.ifPresent(run -> {
            floor.orders().putBack(lacking);
            current = Optional.of(run);
        });
        return other.isPresent();
    }
}
