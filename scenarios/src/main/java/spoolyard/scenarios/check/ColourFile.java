package spoolyard.scenarios.check;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.CsvColumns;
import spoolyard.scenarios.read.CsvRow;
import spoolyard.scenarios.read.Node;

/** The colours of a plant, one a row. */
final class ColourFile {
    static final CsvColumns COLUMNS = new CsvColumns()
            .need("colour_code", "color_code", "code", "colour", "color")
            .need("colour_name", "color_name", "name")
            .need("L", "L*")
            .need("a", "a*")
            .need("b", "b*")
            .need("shade_class", "class")
            .need("pigment_strength", "strength")
            .need("masterbatch_pct", "masterbatch_%", "concentrate_pct", "concentrate_%", "concentrate", "letdown_pct")
            .may("polymers");

    private static final Kind<Double> LIGHTNESS = Numbers.from("0", "100");
    private static final Kind<Double> CHROMA = Numbers.from("-150", "150");
    private static final Kind<Integer> SHADE_CLASS = Numbers.whole(1, 4);
    private static final Kind<Double> STRENGTH = Numbers.above("0", "100");
    private static final Kind<Double> PERCENT = Numbers.from("0", "50");

    private final Map<String, Polymer> polymers;
    private final Reading reading;
    private final Map<String, Colour> colours = new LinkedHashMap<>();
    private final Map<String, List<String>> offered = new LinkedHashMap<>();
    private final Map<String, Origin> rows = new LinkedHashMap<>();

    private ColourFile(Map<String, Polymer> polymers, Reading reading) {
        this.polymers = polymers;
        this.reading = reading;
    }

    static Products read(Table table, Map<String, Polymer> polymers, Reading reading) {
        ColourFile file = new ColourFile(polymers, reading);
        table.rows().forEach(file::add);
        return new Products(polymers, file.colours, file.offered, file.rows, table.isWhole());
    }

    private void add(CsvRow row) {
        String code = read(row, "colour_code", Words.text());
        Colour colour = new Colour(
                code,
                read(row, "colour_name", Words.text()),
                read(row, "L", LIGHTNESS),
                read(row, "a", CHROMA),
                read(row, "b", CHROMA),
                read(row, "shade_class", SHADE_CLASS),
                read(row, "pigment_strength", STRENGTH),
                read(row, "masterbatch_pct", PERCENT) / 100);
        if (colours.putIfAbsent(code, colour) != null) {
            reading.fault(
                    FaultKind.DUPLICATE_NAME,
                    row.cell("colour_code"),
                    "Each colour may stand once.",
                    "delete one of the two rows, or give it another code");
        }
        offered.put(code, polymersOf(row));
        rows.putIfAbsent(code, row.cell("L").origin());
    }

    private List<String> polymersOf(CsvRow row) {
        Node cell = row.cell("polymers");
        if (!(cell instanceof Node.Text text)) {
            return List.of();
        }
        Kind<String> polymer = Words.name("polymer", polymers.keySet());
        return Arrays.stream(text.text().split("[\\s,;/]+"))
                .map(word -> polymer.read(new Node.Text(cell.origin(), word), reading))
                .toList();
    }

    private <T> T read(CsvRow row, String column, Kind<T> kind) {
        return kind.read(row.cell(column), reading);
    }
}
