package spoolyard.analysis.report;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/** The folders that stand beside a results folder while it is being replaced. */
final class FolderTree {
    /** Marks a folder that is being filled. */
    static final String PARTIAL = "partial";

    /** Marks a folder that is being replaced. */
    static final String FORMER = "former";

    private static final Duration SURELY_ABANDONED = Duration.ofMinutes(10);

    private FolderTree() {}

    /**
     * How the names beside a results folder begin.
     *
     * @param target the results folder
     * @param mark {@link #PARTIAL} or {@link #FORMER}
     * @return the beginning; hidden, where a leading dot hides
     */
    static String prefix(Path target, String mark) {
        return "." + target.getFileName() + "." + mark + "-";
    }

    /**
     * Deletes a folder and all in it; what cannot be deleted stays.
     *
     * @param folder need not be there; links in it are deleted, not followed
     */
    static void deleteIfPossible(Path folder) {
        try {
            if (Files.exists(folder)) {
                Files.walkFileTree(folder, new Deleting());
            }
        } catch (IOException leftForTheNextSweep) {
            folder.toFile().deleteOnExit();
        }
    }

    /**
     * Deletes what killed runs have left beside a results folder: nothing younger than ten minutes, which may belong to
     * a run still under way.
     *
     * @param target the results folder
     * @throws IOException if the folder around it cannot be read
     */
    static void sweepLeftovers(Path target) throws IOException {
        List<Path> leftovers;
        try (Stream<Path> siblings = Files.list(target.getParent())) {
            leftovers = siblings.filter(sibling -> isLeftover(target, sibling)).toList();
        }
        leftovers.forEach(FolderTree::deleteIfPossible);
    }

    private static boolean isLeftover(Path target, Path sibling) {
        String name = sibling.getFileName().toString();
        boolean isOurs = name.startsWith(prefix(target, PARTIAL)) || name.startsWith(prefix(target, FORMER));
        return isOurs && isAbandoned(sibling);
    }

    private static boolean isAbandoned(Path folder) {
        try {
            return Files.isDirectory(folder)
                    && Files.getLastModifiedTime(folder)
                            .toInstant()
                            .isBefore(Instant.now().minus(SURELY_ABANDONED));
        } catch (IOException goneMeanwhile) {
            return false;
        }
    }

    private static final class Deleting extends SimpleFileVisitor<Path> {
        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, IOException failure) throws IOException {
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
        }
    }
}
