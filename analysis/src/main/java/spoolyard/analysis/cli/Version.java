package spoolyard.analysis.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Which version of the program this is. */
final class Version implements IVersionProvider {
    /**
     * The version.
     *
     * @return for example {@code 0.1.0}
     */
    static String number() {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return properties.getProperty("version");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"spoolyard " + number() + " (Java " + Runtime.version() + ")"};
    }
}
