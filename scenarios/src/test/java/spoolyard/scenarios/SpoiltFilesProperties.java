package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.ScenarioException;

/** However a file is spoilt, reading ends with a scenario or with faults that say where and how to mend. */
final class SpoiltFilesProperties {
    private static final List<String> FILES = List.of("plant.yaml", "orders.csv", "colours.csv", "changeovers.csv");
    private static final List<String> SCRAPS = List.of(
            "",
            " ",
            "\n",
            ":",
            ",",
            ";",
            "\"",
            "'",
            "-",
            "{",
            "}",
            "[",
            "]",
            "#",
            "&a",
            "*a",
            "!x",
            "null",
            "~",
            "0",
            "-1",
            "1e99",
            "99999999999",
            "kg",
            "%",
            "ä",
            "\t",
            "\r",
            "\u0000",
            "\uFEFF",
            "|",
            ">",
            "? ",
            "---",
            "nobody",
            "unlimited",
            "always",
            "none",
            "2027-02-30",
            "24:00",
            "99:99");

    @Property(tries = 1500, seed = "20270301")
    void endsWithAScenarioOrWithFaults(@ForAll @IntRange(min = 0) int seed) throws IOException {
        Random random = new Random(seed);
        Path parent = Files.createTempDirectory("spoilt");
        ScenarioFolder folder = ScenarioFolder.everything(parent);
        String file = FILES.get(random.nextInt(3) == 0 ? random.nextInt(FILES.size()) : 0);
        String text = folder.text(file);
        for (int i = 0; i <= random.nextInt(3); i++) {
            text = spoilt(text, random);
        }
        folder.write(file, text);

        try {
            assertThat(ScenarioReader.read(folder.path(), List.of()).plant()).isNotNull();
        } catch (ScenarioException e) {
            assertThat(e.faults()).isNotEmpty().allSatisfy(SpoiltFilesProperties::saysWhereAndHow);
        }
        delete(folder.path(), parent);
    }

    private static void saysWhereAndHow(Fault fault) {
        assertThat(fault.text()).matches("(?s)[^\\n]+: [^\\n]+ = [^\\n]*\\. [^\\n]+\\.\\n  Mend: [^\\n]+\\.");
        assertThat(fault.file()).isNotEqualTo("nowhere");
    }

    private static String spoilt(String text, Random random) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int line = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        String scrap = SCRAPS.get(random.nextInt(SCRAPS.size()));
        switch (random.nextInt(7)) {
            case 0 -> lines.remove(line);
            case 1 -> lines.add(other, lines.get(line));
            case 2 -> lines.set(line, lines.get(line).replaceFirst(":.*", ": " + scrap.replace("\n", "")));
            case 3 -> lines.set(line, cut(lines.get(line), random) + scrap);
            case 4 -> lines.set(line, lines.get(other));
            case 5 -> lines.set(line, scrap + lines.get(line));
            default -> lines.set(line, swapped(lines.get(line), scrap, random));
        }
        return String.join("\n", lines);
    }

    private static String cut(String line, Random random) {
        return line.substring(0, random.nextInt(line.length() + 1));
    }

    /** One word of the line gives way to the scrap. */
    private static String swapped(String line, String scrap, Random random) {
        String[] words = line.split("(?<=[ ,:])|(?=[ ,:])");
        words[random.nextInt(words.length)] = scrap;
        return String.join("", words);
    }

    private static void delete(Path folder, Path parent) throws IOException {
        for (String file : FILES) {
            Files.deleteIfExists(folder.resolve(file));
        }
        Files.delete(folder);
        Files.delete(parent);
    }
}
