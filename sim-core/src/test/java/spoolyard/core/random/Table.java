package spoolyard.core.random;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Rows of a small table of numbers beside the tests; lines that start with # name the source. */
final class Table {
    private Table() {}

    static List<double[]> rows(String name) {
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(Table.class.getResourceAsStream(name), StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(Table::numbers)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double[] numbers(String line) {
        return List.of(line.split(",")).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
