package spoolyard.core.architecture.planted.process;

import java.io.File;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import umontreal.ssj.util.Num;

/** Breaks: no outside world, no hidden input, no unordered collection, no SSJ here. Never run. */
final class Untidy {
    private final Map<String, File> files = new ConcurrentHashMap<>();
    private final Random random = new Random();

    void sayWhatTimeItIs() {
        System.out.println(files.size() + " " + LocalDate.now() + random.nextInt());
        LongSupplier clock = System::nanoTime;
        new Thread(clock::getAsLong).start();
    }

    double guess(List<String> words) {
        return Num.lnGamma(2)
                + Math.random()
                        * words.parallelStream()
                                .mapToInt(word -> word.toLowerCase().length())
                                .sum();
    }

    Map<Integer, Set<String>> shuffle(List<String> words) {
        Supplier<Map<Integer, Set<String>>> empty = HashMap::new;
        Map<Integer, Set<String>> result = empty.get();
        result.put(0, Set.of("a", "b"));
        result.put(1, new HashSet<>(words));
        result.put(2, Set.copyOf(words));
        result.put(3, words.stream().collect(Collectors.toSet()));
        result.putAll(Map.of(
                4,
                words.stream().collect(Collectors.groupingBy(String::length)).keySet().stream()
                        .collect(Collectors.toMap(Object::toString, length -> length))
                        .keySet()));
        return result;
    }
}
