package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every file in {@code scenarios/faulty} holds one fault and says, in its first lines or beside it, how it is reported.
 */
class FaultyScenarioTest {
    private static final String NONE = "-";

    @ParameterizedTest
    @MethodSource("faulty")
    void aFaultIsReportedOnceWithItsCodePlaceValueAndAdvice(Path file) throws IOException {
        List<String> expected = expectation(file);

        Reading reading = new ScenarioReader(OptionalLong.empty()).read(file.toString(), Files.readAllBytes(file));

        List<Notice> errors = reading.notices().stream()
                .filter(notice -> notice.severity() == Severity.ERROR)
                .toList();
        assertThat(errors).as("errors of %s", file).hasSize(1);
        Notice error = errors.get(0);
        assertThat(String.format(
                        Locale.ROOT,
                        "# expect: %s line %d field %s",
                        error.code().code(),
                        error.line(),
                        orNone(error.field())))
                .isEqualTo(expected.get(0));
        assertThat("# value: " + orNone(error.value())).isEqualTo(expected.get(1));
        assertThat(error.message()).contains(expected.get(2).substring("# says: ".length()));
        assertThat(error.file()).isEqualTo(reportedIn(expected, file).toString());
        assertThat(error.column()).isPositive();
        assertThat(reading.scenario()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void aMessageNamesTheValueAndReadsAsSentences(Path file) throws IOException {
        Reading reading = new ScenarioReader(OptionalLong.empty()).read(file.toString(), Files.readAllBytes(file));

        for (Notice notice : reading.notices()) {
            assertThat(notice.message()).endsWith(".").doesNotContain("null", "Exception", "NaN", "..");
            if (!notice.field().isEmpty()) {
                assertThat(notice.message()).contains(notice.value());
            }
        }
    }

    @Test
    void everyCodeThatIsAnErrorHasAFaultyFile() throws IOException {
        // file_too_large is left to a test of its own: no such file belongs into the repository.
        List<String> codes = new java.util.ArrayList<>();
        for (Path file : faulty()) {
            codes.add(expectation(file).get(0).split(" ", -1)[2]);
        }
        assertThat(java.util.Arrays.stream(NoticeCode.values())
                        .filter(code -> code.severity() == Severity.ERROR && code != NoticeCode.FILE_TOO_LARGE)
                        .map(NoticeCode::code))
                .as("add a file to scenarios/faulty for each new code")
                .isSubsetOf(codes);
    }

    static List<Path> faulty() {
        return Scenarios.faulty();
    }

    private static List<String> expectation(Path file) throws IOException {
        Path beside = file.resolveSibling(file.getFileName().toString().replace(".yaml", ".expect"));
        return Files.readAllLines(Files.exists(beside) ? beside : file, StandardCharsets.UTF_8);
    }

    /** The file of the notice: the scenario, or the table named in the fifth line. */
    private static Path reportedIn(List<String> expected, Path file) {
        String beside = "# in: ";
        return expected.size() > 4 && expected.get(4).startsWith(beside)
                ? file.resolveSibling(expected.get(4).substring(beside.length()))
                : file;
    }

    private static String orNone(String text) {
        return text.isEmpty() ? NONE : text;
    }
}
