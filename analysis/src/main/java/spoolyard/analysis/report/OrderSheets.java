package spoolyard.analysis.report;

import java.util.List;
import spoolyard.core.plant.Order;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult;

/** The orders: when they were made and packed, and on which line. */
final class OrderSheets {
    static final Sheet<InClock> ORDERS = new Sheet<>(
            "orders",
            List.of("order", "product", "spool_kg", "ordered_spools", "due_local"),
            (setting, result) -> Promise.all(setting.plant(), result).stream()
                    .map(promise -> new InClock(promise, setting.clock()))
                    .toList(),
            InClock::key,
            List.of(
                    Column.amount("good_spools", each -> each.result().goodSpools()),
                    Column.amount("packed_spools", each -> each.result().packedSpools()),
                    Column.amount("lost_spools", each -> each.result().lostSpools()),
                    Column.amount("short_spools", each -> each.result().shortSpools()),
                    Column.instant("begun", each -> hours(each.result().startTick())),
                    Column.instant("made", each -> hours(each.result().madeTick())),
                    Column.instant("packed", each -> hours(each.result().packedTick())),
                    Column.amount(
                            "packed_pct_of_replications", each -> each.promise().isPacked() ? 100 : 0),
                    Column.average("late_pct_of_decided_replications", OrderSheets::latePercent),
                    Column.average("days_late", OrderSheets::daysLate)));

    static final Sheet<RunResult.OrderResult> ORDER_LINES = new Sheet<>(
            "order_lines",
            List.of("order", "line"),
            (setting, result) -> result.orders().stream()
                    .filter(order -> !order.line().isEmpty())
                    .toList(),
            order -> List.of(order.id(), order.line()),
            List.of(Column.amount("pct_of_replications", order -> 100)),
            setting -> Ranked.by(
                            0,
                            setting.plant().book().orders().stream()
                                    .map(Order::id)
                                    .toList())
                    .thenComparing(Ranked.lines(1, setting.plant())));

    private OrderSheets() {}

    private static double hours(long tick) {
        return tick == Ticks.NEVER ? Double.NaN : Ticks.toHours(tick);
    }

    private static double latePercent(InClock each) {
        if (!each.promise().isDecided()) {
            return Double.NaN;
        }
        return each.promise().isLate() ? 100 : 0;
    }

    private static double daysLate(InClock each) {
        return each.promise().isDecided() ? each.promise().daysLate() : Double.NaN;
    }

    /** An order and the clock that shows its due date. */
    record InClock(Promise promise, PlantClock clock) {
        RunResult.OrderResult result() {
            return promise.result();
        }

        List<String> key() {
            return List.of(
                    promise.order().id(),
                    promise.order().product().label(),
                    String.valueOf(promise.order().product().spoolKg()),
                    String.valueOf(promise.order().spools()),
                    clock.minute(promise.order().dueTick()));
        }
    }
}
