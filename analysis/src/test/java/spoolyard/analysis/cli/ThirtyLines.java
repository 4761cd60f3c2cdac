package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Writes a plant of 30 lines with 1000 orders: Orrenvale's lines and its book again and again, the colours in four shades each, with
 * four times the crew. All invented.
 */
final class ThirtyLines {
    private static final int LINES = 30;
    private static final int ORDERS = 1000;
    private static final int TIMES = 4;
    /** So that the lines have as much to do as Orrenvale's: 120 orders for 8. */
    private static final double LOAD = 120.0 / 8 * LINES / ORDERS;

    private static final Pattern LINE = Pattern.compile("(?m)^  L\\d:.*\\n(?:    .*\\n)+");

    private final Random random = new Random(1);
    private final Path from;
    private final Path to;

    private ThirtyLines(Path from, Path to) {
        this.from = from;
        this.to = to;
    }

    /**
     * Writes the folder.
     *
     * @param args the folder of Orrenvale, and the one to be written
     */
    public static void main(String[] args) throws IOException {
        new ThirtyLines(Path.of(args[0]), Path.of(args[1])).write();
    }

    private void write() throws IOException {
        Files.createDirectories(to);
        Files.writeString(to.resolve("plant.yaml"), plant(Files.readString(from.resolve("plant.yaml"))));
        Files.write(to.resolve("colours.csv"), colours(Files.readAllLines(from.resolve("colours.csv"))));
        Files.write(to.resolve("orders.csv"), orders(Files.readAllLines(from.resolve("orders.csv"))));
        Files.copy(from.resolve("changeovers.csv"), to.resolve("changeovers.csv"));
    }

    /** Lines again; crew, dryers and finishing fourfold; stocks that never run out. */
    private static String plant(String text) {
        List<String> lines =
                LINE.matcher(text).results().map(MatchResult::group).toList();
        String again = IntStream.range(0, LINES)
                .mapToObj(i -> lines.get(i % lines.size()).replaceFirst("L\\d:", "L" + (i + 1) + ":"))
                .collect(Collectors.joining());
        int first = text.indexOf(lines.get(0));
        int end = text.indexOf(lines.get(lines.size() - 1))
                + lines.get(lines.size() - 1).length();
        String whole = text.substring(0, first) + again + text.substring(end);
        return Pattern.compile("(?m)^.*(crew: \\{operator: \\d|mobile_dryers|  places: \\d|rack: |quarantine: \\d).*$")
                .matcher(whole.replaceFirst("(?s)\nmaterials:.*?\nenergy:", "\nenergy:")
                        .replaceFirst("\n      zones: .*\n", "\n")
                        .replaceFirst("\n      zones_strict: .*\n", "\n"))
                .replaceAll(found -> Pattern.compile("(?<=: )\\d+(?=[ ,}\\n]|$)")
                        .matcher(found.group())
                        .replaceAll(number -> "" + TIMES * Integer.parseInt(number.group())));
    }

    private List<String> colours(List<String> rows) {
        List<String> all = new ArrayList<>(rows);
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",");
            for (int shade = 1; shade < TIMES && !cells[0].equals("NAT"); shade++) {
                String[] other = cells.clone();
                other[0] = cells[0] + shade;
                other[1] = cells[1] + " " + shade;
                for (int i = 2; i < 5; i++) {
                    other[i] = ""
                            + Math.min(
                                    97,
                                    Math.max(i == 2 ? 3 : -90, Integer.parseInt(cells[i]) + random.nextInt(17) - 8));
                }
                all.add(String.join(",", other));
            }
        }
        return all;
    }

    private List<String> orders(List<String> rows) {
        List<String> all = new ArrayList<>(rows.subList(0, 1));
        for (int i = 0; i < ORDERS; i++) {
            String[] cells = rows.get(1 + i % (rows.size() - 1)).split(",");
            cells[0] = "SO-" + (10_000 + i);
            long spools = Math.round(Integer.parseInt(cells[5]) * LOAD);
            cells[5] = "" + spools;
            cells[6] = "" + spools * Double.parseDouble(cells[4]);
            int shade = random.nextInt(TIMES);
            cells[2] += shade == 0 || cells[2].equals("NAT") ? "" : "" + shade;
            all.add(String.join(",", cells));
        }
        return all;
    }
}
