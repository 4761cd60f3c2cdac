package spoolyard.scenarios.check;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Product;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.Warning;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Times;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.CsvColumns;
import spoolyard.scenarios.read.CsvRow;
import spoolyard.scenarios.read.Node;

/** The order book, one order a row. */
final class OrderFile {
    static final CsvColumns COLUMNS = new CsvColumns()
            .need("order_id", "order_no", "order", "id")
            .need("polymer")
            .need("colour", "color", "colour_code", "color_code")
            .need("diameter_mm", "diameter")
            .need("spool_kg")
            .need("spools", "qty_spools", "quantity")
            .need("due_date", "due")
            .may("release_date", "release")
            .may("priority")
            .may("lines", "allowed_lines")
            .may("net_kg")
            .may("customer")
            .may("status")
            .may("item_code");

    private static final Kind<Double> DIAMETER_MM = Numbers.from("0.5", "10");
    private static final Kind<Double> SPOOL_KG = Numbers.from("0.01", "50");
    private static final Kind<Integer> SPOOLS = Numbers.whole(1, 1_000_000);
    private static final Kind<Double> NET_KG = Numbers.above("0", "10000000");
    private static final Kind<LocalDateTime> RELEASE = Times.dateOrDateTime(date -> date.atStartOfDay());
    private static final Kind<LocalDateTime> DUE =
            Times.dateOrDateTime(date -> date.plusDays(1).atStartOfDay());

    private static final int MOST_YEARS = 50;

    private final List<Line> lines;
    private final Products products;
    private final Optional<PlantClock> clock;
    private final Reading reading;
    private final Kind<String> polymerCode;
    private final Kind<String> colourCode;
    private final Map<String, Origin> originById = new HashMap<>();

    /** Without a clock, for its start could not be read, no date is far from it. */
    OrderFile(List<Line> lines, Products products, Optional<PlantClock> clock, Reading reading) {
        this.lines = lines;
        this.products = products;
        this.clock = clock;
        this.reading = reading;
        this.polymerCode = Words.name("polymer", products.polymerCodes());
        this.colourCode = products.colourCode();
    }

    List<Order> read(List<CsvRow> rows) {
        return rows.stream().map(this::order).toList();
    }

    /** Where each order is due, by its id. */
    Map<String, Origin> origins() {
        return originById;
    }

    private Order order(CsvRow row) {
        int before = reading.faults().count();
        String id = id(row);
        Product product = product(row);
        int spools = read(row, "spools", SPOOLS);
        long releaseTick = row.cell("release_date") instanceof Node.Text ? tick(row, "release_date", RELEASE) : 0;
        long dueTick = tick(row, "due_date", DUE);
        Urgency urgency = optional(row, "priority", Urgency.KIND).orElse(Urgency.USUAL);
        List<String> allowed = allowedLines(row);
        Optional<Double> netKg = optional(row, "net_kg", NET_KG);
        if (reading.faults().count() == before) {
            refuseDueBeforeRelease(row, releaseTick, dueTick);
            netKg.ifPresent(kg -> requireSameMass(row, kg, spools * product.spoolKg()));
        }
        List<String> able = lines.stream()
                .filter(line -> allowed.contains(line.name()) && line.canMake(product))
                .map(Line::name)
                .toList();
        if (reading.faults().count() == before) {
            warn(row, product, able);
        }
        return new Order(id, product, spools, releaseTick, dueTick, urgency.priority(), urgency.weight(), able);
    }

    private long tick(CsvRow row, String column, Kind<LocalDateTime> kind) {
        int before = reading.faults().count();
        LocalDateTime wallClock = read(row, column, kind);
        if (clock.isEmpty()) {
            return 0;
        }
        long years = Math.abs(ChronoUnit.YEARS.between(clock.get().start().toLocalDateTime(), wallClock));
        if (years >= MOST_YEARS && reading.faults().count() == before) {
            String allowed = "Must be within " + MOST_YEARS + " years of the start of the run.";
            reading.fault(FaultKind.OUT_OF_RANGE, row.cell(column), allowed, "correct the year");
        }
        return years >= MOST_YEARS ? 0 : clock.get().tick(wallClock);
    }

    private String id(CsvRow row) {
        String id = read(row, "order_id", Words.text());
        Origin first = originById.putIfAbsent(id, row.origin("due_date"));
        if (first != null) {
            reading.fault(
                    FaultKind.DUPLICATE_NAME,
                    row.cell("order_id"),
                    "Each order may stand once; it already stands in line " + first.line() + ".",
                    "delete one of the two rows, or give it another id");
        }
        return id;
    }

    private Product product(CsvRow row) {
        return new Product(
                products.polymer(read(row, "polymer", polymerCode)),
                products.colour(read(row, "colour", colourCode)),
                read(row, "diameter_mm", DIAMETER_MM),
                read(row, "spool_kg", SPOOL_KG));
    }

    private List<String> allowedLines(CsvRow row) {
        Node cell = row.cell("lines");
        List<String> all = lines.stream().map(Line::name).toList();
        if (!(cell instanceof Node.Text text)) {
            return all;
        }
        Kind<String> line = Words.name("line", all);
        return Arrays.stream(text.text().split("[\\s,;/]+"))
                .map(word -> line.read(new Node.Text(cell.origin(), word), reading))
                .toList();
    }

    private void refuseDueBeforeRelease(CsvRow row, long releaseTick, long dueTick) {
        if (dueTick < releaseTick) {
            reading.fault(
                    FaultKind.DUE_BEFORE_RELEASE,
                    row.cell("due_date"),
                    "Must not be before release_date, "
                            + row.cell("release_date").shown() + ".",
                    "correct one of the two dates");
        }
    }

    private void requireSameMass(CsvRow row, double netKg, double spoolsKg) {
        if (Math.abs(netKg - spoolsKg) > 0.01 * spoolsKg) {
            reading.fault(
                    FaultKind.CONTRADICTION,
                    row.cell("net_kg"),
                    "Must be spools times spool_kg = " + Math.round(spoolsKg * 1000) / 1000.0 + " within 1 %.",
                    "correct one of the three, or empty the cell");
        }
    }

    private void warn(CsvRow row, Product product, List<String> able) {
        String order = "order " + row.cell("order_id").shown() + " (" + product.label() + ")";
        if (able.isEmpty()) {
            String message = order + " can be made on no line; it will never be begun.";
            reading.faults().add(new Warning(Warning.Kind.ORDER_WITHOUT_LINE, row.origin("lines"), message));
        }
        if (!products.isOffered(product.polymer().code(), product.colour().code())) {
            String message = order + " asks for a colour that is not offered in this polymer.";
            reading.faults().add(new Warning(Warning.Kind.COLOUR_NOT_OFFERED, row.origin("colour"), message));
        }
    }

    private <T> T read(CsvRow row, String column, Kind<T> kind) {
        return kind.read(row.cell(column), reading);
    }

    private <T> Optional<T> optional(CsvRow row, String column, Kind<T> kind) {
        return row.cell(column) instanceof Node.Text text ? Optional.of(kind.read(text, reading)) : Optional.empty();
    }
}
