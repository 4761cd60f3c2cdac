package spoolyard.scenarios.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;

/** Splits a table into records, each with the line on which it begins. */
final class CsvRecords {
    private static final Pattern LINE_IN_MESSAGE = Pattern.compile("line:? (\\d+)");

    private CsvRecords() {}

    /**
     * A record.
     *
     * @param line line on which it begins, from 1
     * @param texts its cells, decimal commas turned into points
     */
    record Cells(int line, List<String> texts) {}

    static List<Cells> of(SourceText source, Faults faults) {
        char separator = separator(source.text());
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(false)
                .get();
        List<Cells> records = new ArrayList<>();
        DecimalSign sign = new DecimalSign(source.file(), separator == ';', faults);
        try (CSVParser parser = CSVParser.parse(source.text(), format)) {
            LineStarts lines = new LineStarts(source.text());
            for (CSVRecord row : parser) {
                add(records, row, lines.lineAt(row.getCharacterPosition()), sign);
            }
        } catch (UncheckedIOException | IOException e) {
            faults.add(broken(source.file(), String.valueOf(e.getMessage())));
        }
        return records;
    }

    private static void add(List<Cells> records, CSVRecord row, int line, DecimalSign sign) {
        List<String> stripped = row.stream().map(String::strip).toList();
        if (stripped.stream().anyMatch(text -> !text.isEmpty())) {
            records.add(new Cells(
                    line,
                    stripped.stream().map(text -> sign.withPoint(text, line)).toList()));
        }
    }

    private static char separator(String text) {
        String header = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        long semicolons = header.chars().filter(c -> c == ';').count();
        long commas = header.chars().filter(c -> c == ',').count();
        return semicolons > commas ? ';' : ',';
    }

    private static Fault broken(String file, String message) {
        Matcher matcher = LINE_IN_MESSAGE.matcher(message);
        int line = matcher.find() ? Integer.parseInt(matcher.group(1)) : 0;
        return new Fault(
                FaultKind.BAD_SYNTAX,
                new Origin(file, line, "row"),
                "broken quotes",
                "A quoted cell must end with a quote just before the separator or the end of the line.",
                "close the quote, and write a quote inside a quoted cell twice");
    }
}
