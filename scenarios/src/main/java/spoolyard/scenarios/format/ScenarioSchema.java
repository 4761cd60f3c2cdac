package spoolyard.scenarios.format;

import java.io.InputStream;

/** The JSON Schema (draft 2020-12) of scenario files, with which editors complete and check them. */
public final class ScenarioSchema {
    /** Its file name. */
    public static final String FILE = "spoolyard-scenario.schema.json";

    private ScenarioSchema() {}

    /**
     * Opens the schema.
     *
     * @return JSON in UTF-8; to be closed by the caller
     * @throws IllegalStateException if this program was built without it
     */
    public static InputStream open() {
        InputStream in = ScenarioSchema.class.getResourceAsStream("/spoolyard/scenarios/" + FILE);
        if (in == null) {
            throw new IllegalStateException(FILE + " = (missing). Must be on the class path.");
        }
        return in;
    }
}
