package lanetide.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of the program. */
public final class ProgramVersion {
    private ProgramVersion() {}

    /**
     * Reads the version that the build wrote down.
     *
     * @return for example {@code 0.1.0}
     */
    public static String text() {
        Properties properties = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream("/lanetide/cli/version.properties")) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("the program's version cannot be read", e);
        }
        return properties.getProperty("version");
    }
}
