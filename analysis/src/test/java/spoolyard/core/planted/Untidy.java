package spoolyard.core.planted;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Breaks the rules of the core, to prove that they fire. */
public final class Untidy {
    static int count;

    private Untidy() {}

    /**
     * Ends the program and touches a file.
     *
     * @param arguments a file
     * @throws IOException if it cannot be read
     */
    public static void main(String[] arguments) throws IOException {
        count += Files.readString(Path.of(arguments[0])).length();
        System.exit(spoolyard.scenarios.planted.Untidy.number());
    }
}
