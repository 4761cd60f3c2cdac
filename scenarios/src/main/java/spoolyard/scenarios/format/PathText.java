package spoolyard.scenarios.format;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import spoolyard.scenarios.fault.Origin;

/** File names inside scenario files. */
public final class PathText {
    private PathText() {}

    /**
     * The file that a name means.
     *
     * @param name name as written
     * @param statedAt where it is written: a name in a file is relative to that file, one from the command line to the
     *     present folder
     * @return the path; empty if no file can have the name
     */
    public static Optional<Path> resolve(String name, Origin statedAt) {
        try {
            Path path = Path.of(name);
            boolean isFromCommandLine = statedAt.line() == 0;
            return Optional.of(
                            isFromCommandLine ? path : Path.of(statedAt.file()).resolveSibling(path))
                    .filter(p -> !name.isBlank());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
