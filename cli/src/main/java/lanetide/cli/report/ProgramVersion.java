package lanetide.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The versions of the program and of what it carries inside, as the build wrote them down. */
public final class ProgramVersion {
    private ProgramVersion() {}

    /**
     * The version of the program.
     *
     * @return for example {@code 0.1.0}
     */
    public static String text() {
        return of("version");
    }

    /**
     * The version of the program and the commit that it was built from, which tells two builds of one version apart.
     *
     * @return for example {@code 0.1.0 (0123456789ab)}; the version alone where the build knew no commit
     */
    public static String withCommit() {
        String commit = of("commit");
        return commit.matches("[0-9a-f]+") ? text() + " (" + commit + ")" : text();
    }

    /**
     * The version of a library that pages carry inside.
     *
     * @param library its name
     * @return for example {@code 7.9.0}
     */
    public static String of(String library) {
        Properties versions = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream("/lanetide/cli/version.properties")) {
            versions.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("the program's versions cannot be read", e);
        }
        return versions.getProperty(library);
    }
}
