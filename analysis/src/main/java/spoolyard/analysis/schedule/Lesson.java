package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import spoolyard.core.plant.StockItem;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;

/**
 * What one simulated replication tells a planner. Immutable.
 *
 * @param made orders that were made, in book order
 * @param scarce articles that ran out, named by {@link #article}
 * @param fedPerGood mass fed for each kg of good spools, {@code >= 1}
 * @param deliveries what came of each article, by time; empty if nobody listened
 */
public record Lesson(
        List<Made> made, Set<String> scarce, double fedPerGood, Map<String, List<StockItem.Delivery>> deliveries) {
    /** Copies the collections. */
    public Lesson {
        made = List.copyOf(made);
        scarce = Set.copyOf(scarce);
        deliveries = Map.copyOf(deliveries);
    }

    /**
     * An order that was made.
     *
     * @param order its number in the book
     * @param line name of the line
     * @param startS when its preparation began, which may be before the line was free, seconds since the start of the run
     * @param endS its last good spool, seconds since the start of the run
     */
    public record Made(int order, String line, double startS, double endS) {}

    /**
     * Reduces a replication.
     *
     * @param result what it told
     * @param deliveries what was heard of deliveries in it
     * @return the lesson
     */
    public static Lesson of(RunResult result, Deliveries deliveries) {
        double fedKg = result.lines().stream().mapToDouble(line -> line.fedKg()).sum();
        double goodKg =
                result.lines().stream().mapToDouble(line -> line.goodKg()).sum();
        Set<String> scarce = result.stocks().stream()
                .filter(stock -> stock.timesOut() > 0)
                .map(stock -> article(stock.kind(), stock.name()))
                .collect(Collectors.toSet());
        return new Lesson(made(result), scarce, goodKg > 0 ? Math.max(1, fedKg / goodKg) : 1, deliveries.heard());
    }

    private static List<Made> made(RunResult result) {
        return IntStream.range(0, result.orders().size())
                .filter(i -> result.orders().get(i).madeTick() != Ticks.NEVER)
                .mapToObj(i -> made(i, result.orders().get(i)))
                .toList();
    }

    private static Made made(int number, RunResult.OrderResult order) {
        return new Made(number, order.line(), Ticks.toSeconds(order.startTick()), Ticks.toSeconds(order.madeTick()));
    }

    /** Names an article in store. */
    static String article(String kind, String name) {
        return kind + " " + name;
    }

    /** Listens to a run for what is delivered. For one run. */
    public static final class Deliveries implements EventLog {
        private final Map<String, List<StockItem.Delivery>> heard = new HashMap<>();

        @Override
        public void tell(long tick, String station, String what, String detail) {
            if (what.equals("delivered")) {
                heard.computeIfAbsent(station, article -> new ArrayList<>())
                        .add(new StockItem.Delivery(tick, Double.parseDouble(detail)));
            }
        }

        Map<String, List<StockItem.Delivery>> heard() {
            return heard;
        }
    }
}
