package spoolyard.core.architecture.planted.process;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Breaks nothing. */
final class Tidy {
    /** A constant. */
    public static final int LIMIT = 3;

    Map<Integer, List<String>> byLength(List<String> words) {
        return words.stream().collect(Collectors.groupingBy(String::length, TreeMap::new, Collectors.toList()));
    }

    Map<String, Integer> lengths(List<String> words) {
        return words.stream()
                .map(word -> word.toLowerCase(Locale.ROOT))
                .collect(Collectors.toMap(word -> word, String::length, (a, b) -> a, LinkedHashMap::new));
    }
}
