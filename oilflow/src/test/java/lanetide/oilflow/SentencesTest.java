package lanetide.oilflow;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * This module answers with numbers; words for people are the program's. Read statement by statement, no text of several
 * words may stand in the code but in what an exception says, in the name of a quantity that is checked, and in
 * published limits and sources.
 */
class SentencesTest {

    private static final Set<String> NOT_READ = Set.of("BallLimit.java");
    private static final Pattern COMMENT = Pattern.compile("/\\*(?s:.*?)\\*/|(?m:^\\s*//.*$)");
    private static final Pattern TEXT = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*+\"");
    /** A statement or a head ends where no text is open; so what is handed to a call stays with it. */
    private static final Pattern STATEMENT = Pattern.compile("(?:" + TEXT + "|[^\";{}]++)++");
    /** Letters on both sides of a blank, the second of them perhaps in a place to be filled. */
    private static final Pattern WORDS = Pattern.compile("\\p{L}[,.:;]? [%\\p{L}]");

    private static final Pattern NOT_FOR_PEOPLE =
            Pattern.compile("Exception\\(|\\bRequire\\.\\w+\\(|\\bkeep\\(|\\b(?:\\w+_)?SOURCE =\\s");

    @Test
    void noSentenceStandsInTheCode() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            List<Path> sources = files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !NOT_READ.contains(file.getFileName().toString()))
                    .toList();
            assertThat(sources).hasSizeGreaterThan(50);
            assertThat(sources.stream().flatMap(file -> sentences(read(file)).stream()))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "String told = \"The heads are dry.\";",
                "enum Ball { SPARE(\"goes straight whatever the oil\"); }",
                "return exit > 10 ? \"\" : \"play further out\";"
            })
    void aSentenceIsFound(String source) {
        assertThat(sentences(source)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "throw new IllegalArgumentException(\"step is \" + step + \"; it must not be 0\");",
                "this.lengthM = Require.inRange(lengthM, \"length (m) of pattern \" + id, 5, 15);",
                "/** Nobody \"comes back\" here. */ int x;"
            })
    void whatNobodyReadsIsNone(String source) {
        assertThat(sentences(source)).isEmpty();
    }

    private static List<String> sentences(String source) {
        return STATEMENT
                .matcher(COMMENT.matcher(source).replaceAll(""))
                .results()
                .map(MatchResult::group)
                .filter(statement -> !NOT_FOR_PEOPLE.matcher(statement).find())
                .filter(statement -> TEXT.matcher(statement)
                        .results()
                        .anyMatch(text -> WORDS.matcher(text.group()).find()))
                .toList();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
