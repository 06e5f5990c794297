package lanetide.squads;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * This module answers with facts; words for people are the program's. Read statement by statement, no text of several
 * words may stand in the code, but in three places: what an exception says, the name of an event in the kernel's trace,
 * and the name of a kernel's statistic or resource.
 */
class SentencesTest {
    private static final Pattern COMMENT = Pattern.compile("/\\*(?s:.*?)\\*/|(?m:^\\s*//.*$)");
    private static final Pattern TEXT = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*+\"");
    /** A statement or a head ends where no text is open; so what is handed to a call stays with it. */
    private static final Pattern STATEMENT = Pattern.compile("(?:" + TEXT + "|[^\";{}]++)++");
    /** Letters on both sides of a blank, the second of them perhaps in a place to be filled. */
    private static final Pattern WORDS = Pattern.compile("\\p{L}[,.:;]? [%\\p{L}]");

    private static final Pattern NOT_FOR_PEOPLE = Pattern.compile(
            "Exception\\(|\\bsuper\\(|\\b[Rr]equire\\w*[.(]|\\.schedule(?:At)?\\(|new (?:Tally|Resource)\\(|\\w*[lL]abel = ");

    @Test
    void noSentenceStandsInTheCode() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            List<Path> sources =
                    files.filter(file -> file.toString().endsWith(".java")).toList();
            assertThat(sources).hasSizeGreaterThan(100);
            assertThat(sources)
                    .allSatisfy(file -> assertThat(sentences(read(file))).isEmpty());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "String told = \"Nobody walks.\";",
                "enum Reason { PERFECT(\"nothing better exists\"); }",
                "add(\"wear\", \"Squad \" + id + \" has groups of \" + size);",
                "return fits ? \"\" : \"{0}; so few pairs are not enough\";"
            })
    void aSentenceIsFound(String source) {
        assertThat(sentences(source)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "throw new IllegalArgumentException(\"step is \" + step + \"; it must not be 0\");",
                "streams.stream(\"fairness/seats\"); String id = squad + \" (2)\";",
                "simulator.schedule(delayMs, Phase.PLAY, \"pins are set\", () -> { run(); });",
                "/** Nobody \"comes back\" here. */ int x;"
            })
    void whatNobodyReadsIsNone(String source) {
        assertThat(sentences(source)).isEmpty();
    }

    private static List<String> sentences(String source) {
        return STATEMENT
                .matcher(COMMENT.matcher(source).replaceAll(""))
                .results()
                .map(statement -> statement.group())
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
