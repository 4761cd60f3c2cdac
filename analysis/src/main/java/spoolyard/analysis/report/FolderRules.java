package spoolyard.analysis.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What may be where results shall go: nothing, an empty folder, or results of ours or the journal of a study with nothing beside
 * them. */
final class FolderRules {
    private static final long LARGEST_SUMMARY_BYTES = 64L << 20;
    private static final String MEND = "give another folder with --out, or move that one away";

    private FolderRules() {}

    /**
     * Checks a place.
     *
     * @param target absolute path
     * @param given the path as a person gave it
     * @throws ResultsRefusedException if results may not go there
     * @throws IOException if what is there cannot be read
     */
    static void check(Path target, String given) throws ResultsRefusedException, IOException {
        if (target.getParent() == null) {
            throw new ResultsRefusedException(given, "Is the root of a file system. Must be a folder in it.", MEND);
        }
        if (Files.exists(target)) {
            checkContents(target, given);
        }
        checkAncestor(target, given);
    }

    /**
     * Protects the points that a stopped study has finished.
     *
     * @param target absolute path
     * @param given the path as a person gave it
     * @throws ResultsRefusedException if a study is unfinished there
     * @throws IOException if what is there cannot be read
     */
    static void refuseUnfinishedStudy(Path target, String given) throws ResultsRefusedException, IOException {
        if (StudyJournal.isUnfinished(target.resolve(StudyJournal.FILE))) {
            throw new ResultsRefusedException(
                    given,
                    "Holds the finished points of a study that was stopped or is at work.",
                    "give another folder with --out; or let the same spoolyard study end first; or delete "
                            + StudyJournal.FILE + " there if nobody wants it");
        }
    }

    private static void checkContents(Path target, String given) throws ResultsRefusedException, IOException {
        if (!Files.isDirectory(target)) {
            throw new ResultsRefusedException(given, "Is a file. Must be a folder, or not there yet.", MEND);
        }
        Set<String> foreign = names(target);
        if (foreign.isEmpty()) {
            return;
        }
        foreign.removeAll(ownFiles(target));
        if (StudyJournal.isOurs(target.resolve(StudyJournal.FILE))) {
            foreign.remove(StudyJournal.FILE);
        }
        if (!foreign.isEmpty()) {
            throw new ResultsRefusedException(
                    given,
                    "Holds what no run wrote: " + shown(foreign) + ". Only an earlier run's results are replaced.",
                    MEND);
        }
    }

    private static void checkAncestor(Path target, String given) throws ResultsRefusedException {
        Path ancestor = target.getParent();
        while (!Files.exists(ancestor) && ancestor.getParent() != null) {
            ancestor = ancestor.getParent();
        }
        if (!Files.isDirectory(ancestor) || !Files.isWritable(ancestor)) {
            throw new ResultsRefusedException(
                    given, "No folder can be made in " + ancestor + ".", "give another folder with --out");
        }
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> children = Files.list(folder)) {
            return children.map(child -> child.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** Names of the files that the summary in a folder says a run wrote; empty if there is no summary of ours. */
    private static List<String> ownFiles(Path folder) throws IOException {
        Path summary = folder.resolve(ResultsFiles.SUMMARY);
        if (!Files.isRegularFile(summary) || Files.size(summary) > LARGEST_SUMMARY_BYTES) {
            return List.of();
        }
        try {
            JsonNode root = new ObjectMapper().readTree(Files.readAllBytes(summary));
            if (!root.path("format").asText().startsWith("spoolyard-results/")) {
                return List.of();
            }
            List<String> own = new ArrayList<>(List.of(ResultsFiles.SUMMARY));
            root.path("files").forEach(name -> own.add(name.asText()));
            return own;
        } catch (JsonProcessingException notJson) {
            return List.of();
        }
    }

    private static String shown(Set<String> names) {
        String first = names.stream().limit(3).collect(Collectors.joining(", "));
        return names.size() > 3 ? first + " and " + (names.size() - 3) + " more" : first;
    }
}
