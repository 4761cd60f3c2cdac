package spoolyard.analysis.sequence;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads benchmark instances: some lie beside the tests, the whole sets in the folder that a system property names. */
final class Instances {
    private Instances() {}

    /** Folder with the sets {@code tsplib}, {@code wtsds} and {@code upmsp_small}; empty if nobody named one. */
    static Optional<Path> folder() {
        return Optional.ofNullable(System.getProperty("spoolyard.instances"))
                .filter(name -> !name.isBlank())
                .map(Path::of)
                .filter(Files::isDirectory);
    }

    static String text(String name) throws IOException {
        try (InputStream in = Instances.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** A tour becomes a line that starts and ends in the state of the first city. */
    static SequencingProblem tour(String tsplib) {
        int size = Integer.parseInt(tsplib.replaceAll("(?s).*DIMENSION:\\s*(\\d+).*", "$1"));
        double[] numbers =
                numbers(tsplib.substring(tsplib.indexOf("WEIGHT_SECTION") + 14).replace("EOF", ""));
        double[][] distance = new double[size][];
        for (int from = 0; from < size; from++) {
            distance[from] = Arrays.copyOfRange(numbers, from * size, (from + 1) * size);
        }
        return tour(distance);
    }

    /** Distances from the row to the column. */
    static SequencingProblem tour(double[][] distance) {
        int size = distance.length;
        Changeovers.Table table = Changeovers.table(size - 1);
        for (int from = 0; from < size; from++) {
            for (int to = 0; to < size; to++) {
                if (from != to) {
                    int row = from == 0 ? size - 1 : from - 1;
                    int column = to == 0 ? size : to - 1;
                    table.set(row, column, distance[from][to], 0);
                }
            }
        }
        List<Job> jobs = new ArrayList<>();
        for (int city = 1; city < size; city++) {
            jobs.add(new Job("city " + city, city - 1, 0, Double.POSITIVE_INFINITY, 0, List.of(0.0)));
        }
        return new SequencingProblem(jobs, List.of(line(table)), 0);
    }

    static SequencingProblem weightedTardiness(String instance) {
        int jobCount = Integer.parseInt(instance.replaceAll("(?s).*Problem Size: (\\d+).*", "$1"));
        double[] runs = numbers(between(instance, "Process Times:", "Weights:"));
        double[] weights = numbers(between(instance, "Weights:", "Duedates:"));
        double[] dues = numbers(between(instance, "Duedates:", "Setup Times:"));
        double[] setUps = numbers(between(instance, "Setup Times:", "End Problem"));
        Changeovers.Table table = Changeovers.table(jobCount);
        for (int i = 0; i < setUps.length; i += 3) {
            table.set(setUps[i] < 0 ? jobCount : (int) setUps[i], (int) setUps[i + 1], 0, setUps[i + 2]);
        }
        List<Job> jobs = new ArrayList<>();
        for (int job = 0; job < jobCount; job++) {
            jobs.add(new Job("job " + job, job, 0, dues[job], weights[job], List.of(runs[job])));
        }
        return new SequencingProblem(jobs, List.of(line(table)), 0);
    }

    /** Makespan on unrelated machines; the first order of a machine needs no set-up. */
    static SequencingProblem machines(String instance) {
        int jobs = Integer.parseInt(instance.trim().split("\\s+")[0]);
        int machines = Integer.parseInt(instance.trim().split("\\s+")[1]);
        List<String> lines = instance.lines().toList();
        List<Job> all = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            double[] pairs = numbers(lines.get(2 + job));
            List<Double> runs = new ArrayList<>();
            for (int machine = 0; machine < machines; machine++) {
                runs.add(pairs[2 * machine + 1]);
            }
            all.add(new Job("job " + job, job, 0, Double.POSITIVE_INFINITY, 0, runs));
        }
        double[] setUps =
                numbers(instance.substring(instance.indexOf("SSD") + 3).replaceAll("M\\d+", ""));
        List<SequencedLine> described = new ArrayList<>();
        for (int machine = 0; machine < machines; machine++) {
            Changeovers.Table table = Changeovers.table(jobs);
            for (int i = 0; i < jobs * jobs; i++) {
                table.set(i / jobs, i % jobs, 0, setUps[machine * jobs * jobs + i]);
            }
            described.add(new SequencedLine("M" + machine, WorkingTime.always(), table.done(), List.of()));
        }
        return new SequencingProblem(all, described, 1);
    }

    private static SequencedLine line(Changeovers.Table table) {
        return new SequencedLine("line", WorkingTime.always(), table.done(), List.of());
    }

    private static String between(String text, String first, String second) {
        return text.substring(text.indexOf(first) + first.length(), text.indexOf(second));
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.trim().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
