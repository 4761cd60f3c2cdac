package spoolyard.analysis.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/**
 * A folder of results that is always whole: it is filled beside its place and moved there when complete. An earlier one
 * of ours is replaced only then; a folder that holds anything else is refused. For one thread.
 */
public final class ResultsFolder {
    private final Path target;
    private final String given;
    private final boolean isOfStudy;

    private ResultsFolder(Path target, String given, boolean isOfStudy) {
        this.target = target;
        this.given = given;
        this.isOfStudy = isOfStudy;
    }

    /**
     * Looks whether results may go to a folder. Changes nothing.
     *
     * @param folder where they shall go; need not be there
     * @return the folder, ready to be filled
     * @throws ResultsRefusedException if they may not
     * @throws IOException if what is there cannot be read
     */
    public static ResultsFolder at(Path folder) throws ResultsRefusedException, IOException {
        return at(folder, false);
    }

    /**
     * Looks whether the results of a study may go to a folder, where finished points of it may be. Changes nothing.
     *
     * @param folder where they shall go; need not be there
     * @return the folder, ready to be filled
     * @throws ResultsRefusedException if they may not
     * @throws IOException if what is there cannot be read
     */
    public static ResultsFolder ofStudy(Path folder) throws ResultsRefusedException, IOException {
        return at(folder, true);
    }

    private static ResultsFolder at(Path folder, boolean isOfStudy) throws ResultsRefusedException, IOException {
        Path target = Files.exists(folder)
                ? folder.toRealPath()
                : folder.toAbsolutePath().normalize();
        ResultsFolder results = new ResultsFolder(target, folder.toString(), isOfStudy);
        results.check();
        return results;
    }

    /**
     * Fills a new folder and puts it in place.
     *
     * @param filling writes the files
     * @throws ResultsRefusedException if something foreign has come to the place meanwhile
     * @throws IOException if a file cannot be written; the place is then as it was
     */
    public void replaceWith(Filling filling) throws ResultsRefusedException, IOException {
        Files.createDirectories(target.getParent());
        Path partial = sibling(FolderTree.PARTIAL);
        try (KillGuard guard = new KillGuard(() -> FolderTree.deleteIfPossible(partial))) {
            Files.createDirectory(partial);
            filling.into(partial);
            check();
            guard.unlessKilled(() -> putInPlace(partial));
        } finally {
            FolderTree.deleteIfPossible(partial);
        }
        FolderTree.sweepLeftovers(target);
    }

    private void check() throws ResultsRefusedException, IOException {
        FolderRules.check(target, given);
        if (!isOfStudy) {
            FolderRules.refuseUnfinishedStudy(target, given);
        }
    }

    private void putInPlace(Path partial) throws IOException {
        if (!Files.exists(target)) {
            Files.move(partial, target, StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        Path former = sibling(FolderTree.FORMER);
        Files.move(target, former, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(partial, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException failure) {
            Files.move(former, target, StandardCopyOption.ATOMIC_MOVE);
            throw failure;
        }
        FolderTree.deleteIfPossible(former);
    }

    private Path sibling(String mark) {
        return target.resolveSibling(
                FolderTree.prefix(target, mark) + UUID.randomUUID().toString().substring(0, 8));
    }

    /** Writes files. */
    @FunctionalInterface
    public interface Filling {
        /**
         * Writes all files.
         *
         * @param folder an empty folder
         * @throws IOException if one cannot be written
         */
        void into(Path folder) throws IOException;
    }
}
