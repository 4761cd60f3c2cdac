package spoolyard.analysis.report;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.CRC32;

/**
 * Finished points of a study, kept on disk as soon as each is finished, so that a killed study goes on where it was. A
 * file of lines that only grows: what the study is, then a line for each point, each line with its checksum. A last line
 * that was half written is dropped. For one thread; no two programs may have it open.
 */
public final class StudyJournal implements Closeable {
    /** Name of the file in the results folder. */
    public static final String FILE = "study.journal";

    /** What the number of all points is called among the things that say what the study is. */
    public static final String POINTS = "number of points";

    private static final String FORMAT = "spoolyard-study-journal/1";
    private static final String MEND =
            "give the same study again, another folder with --out, or --fresh to begin again";

    private final FileChannel channel;
    private final SortedMap<Integer, double[][]> finished = new TreeMap<>();

    private StudyJournal(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Opens the journal of a folder; begins one where there is none.
     *
     * @param folder the results folder, made if need be
     * @param given the folder as a person gave it
     * @param study what the study is, by name; anything in which two studies may differ
     * @param isFresh whether to throw away what is there
     * @return the journal
     * @throws ResultsRefusedException if another study is there or at work there, or the file is damaged
     * @throws IOException if it cannot be read or written
     */
    public static StudyJournal open(Path folder, String given, Map<String, String> study, boolean isFresh)
            throws ResultsRefusedException, IOException {
        Files.createDirectories(folder);
        Path file = folder.resolve(FILE);
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        try {
            lock(channel, given);
            if (isFresh) {
                channel.truncate(0);
            }
            StudyJournal journal = new StudyJournal(channel);
            journal.resume(given, study);
            return journal;
        } catch (IOException | ResultsRefusedException failure) {
            channel.close();
            throw failure;
        }
    }

    /**
     * Whether a file is a journal of ours.
     *
     * @param file any path
     * @return true if it begins as one does, or is empty and has its name
     * @throws IOException if it cannot be read
     */
    static boolean isOurs(Path file) throws IOException {
        if (!file.endsWith(FILE) || !Files.isRegularFile(file)) {
            return false;
        }
        byte[] expected = FORMAT.getBytes(StandardCharsets.UTF_8);
        try (var in = Files.newInputStream(file)) {
            byte[] begin = in.readNBytes(expected.length);
            return Arrays.equals(begin, Arrays.copyOf(expected, begin.length));
        }
    }

    /**
     * Whether a file is a journal of ours that lacks points.
     *
     * @param file any path
     * @return true if it has fewer than the study has, or does not say how many that are
     * @throws IOException if it cannot be read
     */
    static boolean isUnfinished(Path file) throws IOException {
        if (!isOurs(file) || Files.size(file) == 0) {
            return false;
        }
        long finished = 0;
        String all = "";
        try (BufferedReader lines = Files.newBufferedReader(file)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] fields = line.split("\t", 4);
                finished += fields[0].equals("point") ? 1 : 0;
                all = fields.length > 2 && fields[1].equals(POINTS) ? fields[2] : all;
            }
        }
        return !all.equals(Long.toString(finished));
    }

    /**
     * Points finished so far.
     *
     * @return by number; shape of each {@code [replication][measure]}
     */
    public SortedMap<Integer, double[][]> finished() {
        return new TreeMap<>(finished);
    }

    /**
     * Keeps a point. It is on disk when this returns.
     *
     * @param point its number
     * @param values shape {@code [replication][measure]}
     * @throws IOException if it cannot be written
     */
    public void add(int point, double[][] values) throws IOException {
        String cells = Arrays.stream(values)
                .map(row -> Arrays.stream(row).mapToObj(Double::toString).collect(Collectors.joining(" ")))
                .collect(Collectors.joining(";"));
        append("point\t" + point + "\t" + cells);
        finished.put(point, values);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }

    private static void lock(FileChannel channel, String given) throws IOException, ResultsRefusedException {
        try {
            if (channel.tryLock() != null) {
                return;
            }
        } catch (OverlappingFileLockException sameProgram) {
            throw busy(given);
        }
        throw busy(given);
    }

    private static ResultsRefusedException busy(String given) {
        return new ResultsRefusedException(
                given, "Another study is at work there.", "wait for it, or give another folder with --out");
    }

    private void resume(String given, Map<String, String> study) throws IOException, ResultsRefusedException {
        byte[] bytes = new byte[Math.toIntExact(channel.size())];
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining() && channel.read(buffer) >= 0) {
            continue;
        }
        List<String> lines = sound(bytes, given);
        Map<String, String> there = new LinkedHashMap<>();
        lines.stream()
                .map(line -> line.split("\t", 3))
                .filter(fields -> fields[0].equals("is"))
                .forEach(fields -> there.put(fields[1], fields[2]));
        if (there.size() < study.size() && study.entrySet().containsAll(there.entrySet())) {
            begin(study);
            return;
        }
        refuseOther(given, study, there);
        lines.forEach(this::take);
    }

    /** Lines that are whole; the file is cut behind the last of them. */
    private List<String> sound(byte[] bytes, String given) throws IOException, ResultsRefusedException {
        List<String> lines = new ArrayList<>();
        int begin = 0;
        for (int end = 0; end < bytes.length; end++) {
            if (bytes[end] == '\n') {
                String line = new String(bytes, begin, end - begin, StandardCharsets.UTF_8);
                int sign = line.lastIndexOf('\t');
                if (sign < 0 || !line.substring(sign + 1).equals(checksum(line.substring(0, sign)))) {
                    throw new ResultsRefusedException(
                            given, "Line " + (lines.size() + 1) + " of its " + FILE + " is damaged.", MEND);
                }
                lines.add(line.substring(0, sign));
                begin = end + 1;
            }
        }
        channel.truncate(begin);
        channel.position(begin);
        return lines;
    }

    private void begin(Map<String, String> study) throws IOException {
        channel.truncate(0);
        channel.position(0);
        append(FORMAT);
        for (Map.Entry<String, String> each : study.entrySet()) {
            append("is\t" + each.getKey() + "\t" + each.getValue());
        }
    }

    private static void refuseOther(String given, Map<String, String> study, Map<String, String> there)
            throws ResultsRefusedException {
        String differing = study.keySet().stream()
                .filter(key -> !study.get(key).equals(there.get(key)))
                .collect(Collectors.joining(", "));
        if (!differing.isEmpty() || there.size() != study.size()) {
            throw new ResultsRefusedException(
                    given, "Holds the points of another study; not the same: " + differing + ".", MEND);
        }
    }

    private void take(String line) {
        String[] fields = line.split("\t", 3);
        if (fields[0].equals("point")) {
            double[][] values = Arrays.stream(fields[2].split(";"))
                    .map(row -> Arrays.stream(row.split(" "))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new);
            finished.put(Integer.parseInt(fields[1]), values);
        }
    }

    private void append(String line) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap((line + "\t" + checksum(line) + "\n").getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        channel.force(false);
    }

    private static String checksum(String line) {
        CRC32 crc = new CRC32();
        crc.update(line.getBytes(StandardCharsets.UTF_8));
        return String.format("%08x", crc.getValue());
    }
}
