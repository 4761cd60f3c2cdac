package spoolyard.scenarios.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import spoolyard.core.plant.Order;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.CsvColumns;
import spoolyard.scenarios.read.CsvRow;
import spoolyard.scenarios.read.Node;

/**
 * A given sequence as a table, one order a row, made from top to bottom on each line. It says where and when, not what: a cell
 * that repeats something of the order must agree with the order book.
 */
final class PlanTable {
    static final CsvColumns COLUMNS = new CsvColumns()
            .need("line")
            .need("order_id", "order_no", "order", "id")
            .may("place")
            .may("polymer")
            .may("colour", "color", "colour_code", "color_code")
            .may("colour_name", "color_name")
            .may("diameter_mm", "diameter")
            .may("spool_kg")
            .may("spools", "qty_spools", "quantity")
            .may("changeover_start_local")
            .may("making_start_local")
            .may("end_local")
            .may("due_local")
            .may("late_days")
            .may("purge_kg")
            .may("changeover_min")
            .may("crew_min");

    private static final Kind<Double> PLACE = Numbers.above("0", "1000000");
    private static final Kind<Double> NUMBER = Numbers.from("0", "10000000");
    private static final int MOST_NAMED = 5;

    private final List<String> lines;
    private final Map<String, Order> orders;
    private final Kind<String> line;
    private final Kind<String> order;
    private final Reading reading;
    private final SequenceCheck check;
    private final Map<String, Double> lastPlace = new HashMap<>();

    PlanTable(List<String> lines, Map<String, Order> orders, Kind<String> order, Reading reading) {
        this.lines = lines;
        this.orders = orders;
        this.line = Words.name("line", lines);
        this.order = order;
        this.reading = reading;
        this.check = new SequenceCheck(orders.values(), reading);
    }

    /** Order ids by line, in plant order; lines without any are left out. */
    Map<String, List<String>> read(List<CsvRow> rows) {
        Map<String, List<String>> byLine = new HashMap<>();
        for (CsvRow row : rows) {
            int before = reading.faults().count();
            String where = line.read(row.cell("line"), reading);
            String id = order.read(row.cell("order_id"), reading);
            if (reading.faults().count() == before) {
                check.check(where, id, row.origin("order_id"));
                requireRisingPlace(where, row);
                requireSame(row, orders.get(id));
                byLine.computeIfAbsent(where, none -> new ArrayList<>()).add(id);
            }
        }
        Map<String, List<String>> sequence = new LinkedHashMap<>();
        lines.stream().filter(byLine::containsKey).forEach(each -> sequence.put(each, byLine.get(each)));
        return sequence;
    }

    private void requireRisingPlace(String where, CsvRow row) {
        number(row, "place", PLACE).ifPresent(place -> {
            if (place <= lastPlace.getOrDefault(where, 0.0)) {
                reading.fault(
                        FaultKind.CONTRADICTION,
                        row.cell("place"),
                        "Must be more than the place above it on line " + where + ": rows are made from top to bottom.",
                        "sort the rows by line and place, or delete the column place");
            }
            lastPlace.put(where, place);
        });
    }

    /** A number; empty if there is none or it is none. */
    private Optional<Double> number(CsvRow row, String column, Kind<Double> kind) {
        int before = reading.faults().count();
        Optional<Double> number =
                row.cell(column) instanceof Node.Text text ? Optional.of(kind.read(text, reading)) : Optional.empty();
        return number.filter(value -> reading.faults().count() == before);
    }

    private void requireSame(CsvRow row, Order booked) {
        requireText(row, "polymer", booked.product().polymer().code());
        requireText(row, "colour", booked.product().colour().code());
        requireNumber(row, "diameter_mm", booked.product().diameterMm());
        requireNumber(row, "spool_kg", booked.product().spoolKg());
        requireNumber(row, "spools", booked.spools());
    }

    private void requireText(CsvRow row, String column, String booked) {
        Node cell = row.cell(column);
        if (cell instanceof Node.Text && !cell.shown().strip().equals(booked)) {
            differs(cell, booked);
        }
    }

    private void requireNumber(CsvRow row, String column, double booked) {
        number(row, column, NUMBER)
                .filter(value -> Math.abs(value - booked) > 1e-6 * booked)
                .ifPresent(value -> differs(
                        row.cell(column),
                        booked == Math.rint(booked) ? Long.toString((long) booked) : Double.toString(booked)));
    }

    private void differs(Node cell, String booked) {
        reading.fault(
                FaultKind.CONTRADICTION,
                cell,
                "Must be " + booked + " as in the order book; a plan says where and when, not what.",
                "change the order in the order book, or empty the cell");
    }

    /** Every order that some line can make must have a row; {@code statedAt} names the plan. */
    void requireAll(Set<String> placed, Node statedAt) {
        List<String> left = orders.values().stream()
                .filter(each -> !each.lines().isEmpty())
                .map(Order::id)
                .filter(id -> !placed.contains(id))
                .toList();
        if (!left.isEmpty()) {
            String named = left.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
            String more = left.size() > MOST_NAMED ? " and " + (left.size() - MOST_NAMED) + " more" : "";
            Origin origin = statedAt.origin();
            reading.faults()
                    .add(new Fault(
                            FaultKind.MISSING_VALUE,
                            origin,
                            statedAt.shown(),
                            "Must have a row for every order of the book; left out: " + named + more + ".",
                            "add the rows to the plan, or take the orders out of the order book"));
        }
    }
}
