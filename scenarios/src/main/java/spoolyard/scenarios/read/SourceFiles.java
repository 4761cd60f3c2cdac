package spoolyard.scenarios.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;

/** Opens the files of a scenario within limits and keeps a running digest of all that was read. Not thread-safe. */
public final class SourceFiles {
    /** Largest YAML file, bytes. */
    public static final long YAML_LIMIT_BYTES = 2_000_000;

    /** Largest CSV file, bytes. */
    public static final long CSV_LIMIT_BYTES = 20_000_000;

    private final Faults faults;
    private final MessageDigest digest;
    private final List<String> names = new ArrayList<>();

    /**
     * Nothing read yet.
     *
     * @param faults takes what is wrong with the files
     */
    public SourceFiles(Faults faults) {
        this.faults = faults;
        try {
            this.digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 is missing, which every Java platform must have.", e);
        }
    }

    /**
     * Reads a file. What is wrong with it is added to the faults.
     *
     * @param path the file
     * @param statedAt where the file is named, for the fault if it is missing
     * @param limitBytes the file may not be larger
     * @return its text; empty if there is a fault
     */
    public Optional<SourceText> open(Path path, Origin statedAt, long limitBytes) {
        String file = shown(path);
        try {
            if (!Files.isRegularFile(path)) {
                return missing(file, statedAt, Files.exists(path) ? "is not a plain file" : "is not there");
            }
            if (Files.size(path) > limitBytes) {
                return tooLarge(file, Files.size(path), limitBytes);
            }
            return decode(file, path, limitBytes);
        } catch (IOException e) {
            return missing(file, statedAt, "cannot be read (" + e.getClass().getSimpleName() + ")");
        }
    }

    /**
     * Adds text that was not read from a file, for example a command-line setting, to the digest.
     *
     * @param text the text
     */
    public void note(String text) {
        update("", text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Digest of all that was read so far: the last part of each name and the bytes, in the order of reading.
     *
     * @return SHA-256 in 64 hexadecimal digits
     * @throws IllegalStateException if the platform cannot copy a digest
     */
    public String contentHash() {
        try {
            return HexFormat.of().formatHex(((MessageDigest) digest.clone()).digest());
        } catch (CloneNotSupportedException e) {
            throw new IllegalStateException("The SHA-256 of this platform cannot be copied.", e);
        }
    }

    /**
     * Files read so far.
     *
     * @return names as a person would type them, in the order of reading
     */
    public List<String> names() {
        return List.copyOf(names);
    }

    /**
     * A path as a person would type it.
     *
     * @param path the path
     * @return with forward slashes and no detours
     */
    public static String shown(Path path) {
        return path.normalize().toString().replace('\\', '/');
    }

    private Optional<SourceText> decode(String file, Path path, long limitBytes) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes((int) limitBytes + 1);
        }
        if (bytes.length > limitBytes) {
            return tooLarge(file, bytes.length, limitBytes);
        }
        names.add(file);
        update(String.valueOf(path.getFileName()), bytes);
        return new Utf8(file, faults).decode(bytes);
    }

    private void update(String name, byte[] bytes) {
        digest.update((name + "\n" + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
        digest.update(bytes);
    }

    private Optional<SourceText> missing(String file, Origin statedAt, String why) {
        String allowed = "Must be a file that can be read; it " + why + ".";
        faults.add(
                new Fault(FaultKind.MISSING_FILE, statedAt, file, allowed, "correct the name, or put the file there"));
        return Optional.empty();
    }

    private Optional<SourceText> tooLarge(String file, long sizeBytes, long limitBytes) {
        String allowed = "Must be at most " + limitBytes / 1_000_000 + " MB.";
        faults.add(new Fault(
                FaultKind.FILE_TOO_LARGE,
                Origin.ofFile(file),
                sizeBytes / 1_000_000 + " MB",
                allowed,
                "name the right file, or leave out what the scenario does not need"));
        return Optional.empty();
    }
}
