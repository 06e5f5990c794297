package lanetide.cli.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** Files of the program that every page carries inside. */
public final class PageFiles {
    private PageFiles() {}

    /** The chart library (d3), as its WebJar has it. */
    static String charts() {
        Properties versions = new Properties();
        try (InputStream in = PageFiles.class.getResourceAsStream("/lanetide/cli/version.properties")) {
            versions.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("the versions of libraries cannot be read", e);
        }
        return text("/META-INF/resources/webjars/d3/" + versions.getProperty("d3") + "/dist/d3.min.js");
    }

    /** A text file of the program. */
    public static String text(String name) {
        try (InputStream in = PageFiles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its part " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the program's part " + name + " cannot be read", e);
        }
    }
}
