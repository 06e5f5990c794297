package lanetide.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Files that come with the program and go into its answers. */
public final class ProgramFiles {
    private ProgramFiles() {}

    /**
     * A text file of the program.
     *
     * @param name its path from the root of the program
     * @return the text
     */
    public static String text(String name) {
        try (InputStream in = ProgramFiles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its part " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the program's part " + name + " cannot be read", e);
        }
    }
}
