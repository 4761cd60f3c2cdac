package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.Product;
import spoolyard.core.policy.DueDateFirst;
import spoolyard.core.policy.LeastPurgeNext;
import spoolyard.core.policy.LightestNext;
import spoolyard.core.policy.NextOrder;
import spoolyard.core.policy.PurgeTable;

/** Hands orders to lines and wakes idle lines when one is released. */
final class OrderDesk {
    private final World world;
    private final OrderBook book;
    private final PurgeTable purges;
    private final List<OrderRun> orders = new ArrayList<>();
    private final List<OrderRun> open = new ArrayList<>();

    OrderDesk(World world, PurgeTable purges) {
        this.world = world;
        this.book = world.plant().book();
        this.purges = purges;
        for (Order order : book.orders()) {
            OrderRun run = new OrderRun(order, orders.size());
            orders.add(run);
            open.add(run);
        }
    }

    List<OrderRun> orders() {
        return orders;
    }

    /** Orders of which all spools stand in racks are made. */
    void closeFilled() {
        open.removeIf(OrderRun::isFilled);
    }

    /** Puts the releases on the calendar. */
    void scheduleReleases(List<LineProcess> lines, long horizon) {
        book.orders().stream()
                .mapToLong(Order::releaseTick)
                .filter(tick -> tick > 0 && tick <= horizon)
                .distinct()
                .forEach(tick -> releaseEvent(lines).at(tick));
    }

    private TimedEvent releaseEvent(List<LineProcess> lines) {
        return new TimedEvent(world.engine(), Phase.RELEASE) {
            @Override
            protected void happen() {
                lines.forEach(LineProcess::orderReleased);
            }

            @Override
            public String toString() {
                return "orders are released";
            }
        };
    }

    /** Spools of an order were lost that nobody makes any more: it is open again, and idle lines may take it. */
    void reopen(OrderRun run, List<LineProcess> lines) {
        if (open.contains(run)) {
            return;
        }
        insert(run);
        new TimedEvent(world.engine(), Phase.ARRIVAL) {
            @Override
            protected void happen() {
                lines.forEach(LineProcess::orderReleased);
            }

            @Override
            public String toString() {
                return "order " + run.order.id() + " is open again";
            }
        }.at(world.now());
    }

    private void insert(OrderRun run) {
        int place = 0;
        while (place < open.size() && open.get(place).index < run.index) {
            place++;
        }
        open.add(place, run);
    }

    /** A line gives up an order that it has not filled. */
    void putBack(OrderRun run) {
        run.leavesLine();
        insert(run);
    }

    /**
     * Chooses the next order for a line and marks it begun; empty if there is none yet. Where orders are chosen by rule,
     * one whose material is not there comes after all for which it is.
     */
    Optional<OrderRun> next(Line line, Optional<Product> inScrew, Predicate<Product> isThere) {
        if (book.rule() == DispatchRule.GIVEN_SEQUENCE) {
            return begin(nextGiven(line), line);
        }
        List<Order> candidates = candidates(line);
        List<Order> ready = candidates.stream()
                .filter(order -> isThere.test(order.product()))
                .toList();
        return begin(byRule(line, inScrew, ready.isEmpty() ? candidates : ready), line);
    }

    /** As {@link #next}, but only an order whose material is there, and only where orders are chosen by rule. */
    Optional<OrderRun> nextThatIsThere(Line line, Optional<Product> inScrew, Predicate<Product> isThere) {
        if (book.rule() == DispatchRule.GIVEN_SEQUENCE) {
            return Optional.empty();
        }
        List<Order> ready = candidates(line).stream()
                .filter(order -> isThere.test(order.product()))
                .toList();
        return begin(byRule(line, inScrew, ready), line);
    }

    private Optional<OrderRun> begin(Optional<OrderRun> chosen, Line line) {
        chosen.ifPresent(run -> {
            open.remove(run);
            run.begin(line.name(), world.now());
        });
        return chosen;
    }

    private Optional<OrderRun> nextGiven(Line line) {
        for (String id : book.givenSequence().getOrDefault(line.name(), List.of())) {
            for (OrderRun run : open) {
                if (run.order.id().equals(id)) {
                    return isReleased(run) ? Optional.of(run) : Optional.empty();
                }
            }
        }
        return Optional.empty();
    }

    private List<Order> candidates(Line line) {
        List<Order> candidates = new ArrayList<>();
        for (OrderRun run : open) {
            if (isReleased(run) && run.order.lines().contains(line.name()) && line.canMake(run.order.product())) {
                candidates.add(run.order);
            }
        }
        return candidates;
    }

    private Optional<OrderRun> byRule(Line line, Optional<Product> inScrew, List<Order> candidates) {
        if (candidates.isEmpty()) {
            return Optional.empty();
        }
        Order chosen = rule().choose(inScrew, candidates, order -> inScrew.map(
                        from -> purges.purgeKg(line, from, order.product()).orElse(Double.POSITIVE_INFINITY))
                .orElse(0.0));
        return open.stream().filter(run -> run.order == chosen).findFirst();
    }

    private NextOrder rule() {
        return switch (book.rule()) {
            case DUE_DATE_FIRST -> new DueDateFirst();
            case LIGHTEST_NEXT -> new LightestNext();
            case LEAST_PURGE_NEXT -> new LeastPurgeNext();
            case GIVEN_SEQUENCE -> throw new IllegalStateException("a given sequence needs no rule");
        };
    }

    private boolean isReleased(OrderRun run) {
        return run.order.releaseTick() <= world.now();
    }
}
