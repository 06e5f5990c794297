package lanetide.oilflow;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The README's validation table is computed, so it cannot drift. After a change of the model, write it anew with
 * {@code mvn -pl oilflow -am test -Dtest=ReadmeTest -Dsurefire.failIfNoSpecifiedTests=false -Dlanetide.writeReadme=true} and
 * read what changed before committing it.
 */
class ReadmeTest {
    private static final Path README = Path.of("README.md");
    private static final String START = "<!-- validation table: computed by ReadmeTest -->\n";
    private static final String END = "<!-- end of validation table -->\n";

    @Test
    void theReadmeStatesWhatTheModelComputes() throws IOException {
        String text = Files.readString(README);
        int from = text.indexOf(START) + START.length();
        int to = text.indexOf(END);
        String computed = ValidationTable.markdown();
        if (Boolean.getBoolean("lanetide.writeReadme")) {
            Files.writeString(README, text.substring(0, from) + computed + text.substring(to));
            return;
        }
        assertThat(text.substring(from, to)).isEqualTo(computed);
    }
}
