package lanetide.des;

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
 * words may stand in the code but in what an exception says, in the name of a statistic, and in the lines of a trace.
 */
class SentencesTest {

    private static final Set<String> NOT_READ = Set.of("TraceEntry.java");
    private static final Pattern COMMENT = Pattern.compile("/\\*(?s:.*?)\\*/|(?m:^\\s*//.*$)");
    private static final Pattern TEXT = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*+\"");
    /** A statement or a head ends where no text is open; so what is handed to a call stays with it. */
    private static final Pattern STATEMENT = Pattern.compile("(?:" + TEXT + "|[^\";{}]++)++");
    /** Letters on both sides of a blank, the second of them perhaps in a place to be filled. */
    private static final Pattern WORDS = Pattern.compile("\\p{L}[,.:;]? [%\\p{L}]");

    private static final Pattern NOT_FOR_PEOPLE = Pattern.compile("Exception\\(|new Tally\\(|requireCount\\(");

    @Test
    void noSentenceStandsInTheCode() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            List<Path> sources = files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !NOT_READ.contains(file.getFileName().toString()))
                    .toList();
            assertThat(sources).hasSizeGreaterThan(15);
            assertThat(sources.stream().flatMap(file -> sentences(read(file)).stream()))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "String told = \"Nobody waits.\";",
                "return waiting > 0 ? \"\" : \"the queue is empty\";",
                "add(\"Squad \" + id + \" has waited \" + waitedMs + \" ms in all\");"
            })
    void aSentenceIsFound(String source) {
        assertThat(sentences(source)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "throw new IllegalArgumentException(\"level is \" + level + \"; it must lie between\");",
                "Tally tally = new Tally(\"minutes for 20 shots\");",
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
