package spoolyard.analysis.report;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;

/** Orders of rows. */
final class Ranked {
    private Ranked() {}

    /**
     * By the place of one text in a list.
     *
     * @param cell which text of the key
     * @param names the list; texts not in it come last
     * @return the order
     */
    static Comparator<List<String>> by(int cell, List<String> names) {
        Map<String, Integer> places = new HashMap<>();
        names.forEach(name -> places.putIfAbsent(name, places.size()));
        return Comparator.comparingInt(key -> places.getOrDefault(key.get(cell), Integer.MAX_VALUE));
    }

    /**
     * By line, in plant order.
     *
     * @param cell which text of the key is the line
     * @param plant the plant
     * @return the order
     */
    static Comparator<List<String>> lines(int cell, Plant plant) {
        return by(cell, plant.lines().stream().map(Line::name).toList());
    }

    /**
     * By the alphabet.
     *
     * @param cell which text of the key
     * @return the order
     */
    static Comparator<List<String>> alphabet(int cell) {
        return Comparator.comparing(key -> key.get(cell));
    }
}
