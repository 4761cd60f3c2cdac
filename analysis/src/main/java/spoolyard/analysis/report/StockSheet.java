package spoolyard.analysis.report;

import java.util.List;
import spoolyard.core.plant.StockItem;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.StockResult;

/** What is in store. */
final class StockSheet {
    static final Column<StockResult> OUT = Column.amount("out_h", stock -> stock.outS() / 3600);
    static final Column<StockResult> LINE_WAIT = Column.amount("lines_stood_h", stock -> stock.lineWaitS() / 3600);

    static final Sheet<StockResult> SHEET = new Sheet<>(
            "stocks",
            List.of("kind", "name", "unit"),
            (setting, result) -> result.stocks(),
            stock -> List.of(stock.kind(), stock.name(), stock.unit()),
            List.of(
                    Column.amount("opening", StockResult::opening),
                    Column.amount("received", StockResult::received),
                    Column.amount("used", StockResult::used),
                    Column.amount("closing", StockResult::closing),
                    Column.amount("mean_level", StockResult::mean),
                    Column.amount("lowest_level", StockResult::lowest),
                    Column.amount("times_out", StockResult::timesOut),
                    OUT,
                    LINE_WAIT,
                    Column.amount("orders_placed", StockResult::ordersPlaced)));

    private StockSheet() {}

    /** Whether a row is of something that lines or packers wait for; nobody waits for regrind. */
    static boolean isAwaited(List<String> key) {
        return !key.get(0).equals(StockItem.Kind.REGRIND.label());
    }

    /** Hours that lines stood for want of anything in store. */
    static double lineWaitH(RunResult result) {
        return result.stocks().stream().mapToDouble(StockResult::lineWaitS).sum() / 3600;
    }
}
