package lanetide.oilflow;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The README's tables are computed, so they cannot drift. After a change of the model, write them anew with {@code mvn
 * -pl oilflow -am test -Dtest=ReadmeTest -Dsurefire.failIfNoSpecifiedTests=false -Dlanetide.writeReadme=true} and read
 * what changed before committing it.
 */
class ReadmeTest {
    private static final Path README = Path.of("README.md");

    @Test
    void theValidationTableStatesWhatTheModelComputes() throws IOException {
        check("validation", ValidationTable.markdown());
    }

    @Test
    void theSensitivityTableStatesWhatTheModelComputes() throws IOException {
        check("sensitivity", SensitivityTable.markdown());
    }

    @Test
    void theFiguresShowWhatTheModelComputes() throws IOException {
        check("figures", Figures.markdown());
    }

    private static void check(String table, String computed) throws IOException {
        String text = Files.readString(README);
        String start = "<!-- " + table + " table: computed by ReadmeTest -->\n";
        int from = text.indexOf(start) + start.length();
        int to = text.indexOf("<!-- end of " + table + " table -->\n");
        if (Boolean.getBoolean("lanetide.writeReadme")) {
            Files.writeString(README, text.substring(0, from) + computed + text.substring(to));
            return;
        }
        assertThat(text.substring(from, to)).isEqualTo(computed);
    }
}
