package lanetide.cli.scenario.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class NoticesTest {
    private final Notices notices = new Notices("test.yaml");

    @Test
    void whatEscapesAfterAnErrorKeepsTheNoticesAndSaysThatNotAllWasChecked() {
        notices.add(NoticeCode.BAD_TEXT, new Place(3, 1), "name", "x", "The name is wrong.");

        Optional<String> rest = notices.keepingWhatIsFound(NoticesTest::refuse);

        assertThat(rest).isEmpty();
        assertThat(notices.list())
                .extracting(Notice::code)
                .containsExactlyInAnyOrder(NoticeCode.BAD_TEXT, NoticeCode.NOT_ALL_CHECKED);
    }

    @Test
    void whatEscapesWithoutAnErrorIsAFaultOfTheProgramAndEscapes() {
        assertThatThrownBy(() -> notices.keepingWhatIsFound(NoticesTest::refuse))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void noticesOfTheScenarioStandBeforeThoseOfTheFilesItNamesEachInTheOrderOfItsFile() {
        notices.in("b.csv").add(NoticeCode.BAD_TEXT, new Place(1, 1), "", "", "b, line 1");
        notices.in("a.csv").add(NoticeCode.BAD_TEXT, new Place(9, 1), "", "", "a, line 9");
        notices.add(NoticeCode.BAD_TEXT, new Place(7, 5), "", "", "line 7, column 5");
        notices.add(NoticeCode.BAD_TEXT, new Place(7, 2), "", "", "line 7, column 2");
        notices.add(NoticeCode.BAD_TEXT, new Place(3, 8), "", "", "line 3");

        assertThat(notices.list())
                .extracting(Notice::message)
                .containsExactly("line 3", "line 7, column 2", "line 7, column 5", "a, line 9", "b, line 1");
    }

    @Test
    void anErrorInAPartIsOneOfTheWholeAndNotOfOtherParts() {
        Notices part = notices.ofPart();
        Notices other = notices.ofPart();

        part.add(NoticeCode.VALUE_WITHOUT_EFFECT, Place.START, "", "", "A warning.");
        assertThat(part.hasErrors()).isFalse();

        part.add(NoticeCode.BAD_TEXT, Place.START, "", "", "An error.");
        assertThat(part.hasErrors()).isTrue();
        assertThat(notices.hasErrors()).isTrue();
        assertThat(other.hasErrors()).isFalse();
    }

    @Test
    void anErrorThatIsToldElsewhereIsCountedAndToldOnce() {
        notices.countError();

        assertThat(notices.hasErrors()).isTrue();
        assertThat(notices.list()).isEmpty();
    }

    @Test
    void aValueIsBuiltWithoutErrorsAloneAndItsRefusalIsANotice() {
        assertThat(notices.build(Place.START, "cut", () -> "built")).contains("built");

        assertThat(notices.build(new Place(4, 2), "cut", NoticesTest::value)).isEmpty();
        assertThat(notices.list())
                .containsExactly(new Notice(
                        NoticeCode.IMPOSSIBLE_COMBINATION,
                        "test.yaml",
                        4,
                        2,
                        "cut",
                        "",
                        "",
                        "In cut, a refusal that no reader foresaw."));

        assertThat(notices.build(Place.START, "cut", () -> "built")).isEmpty();
    }

    @Test
    void whatOnlySomeAnswersRestOnIsKeptApart() {
        notices.withOwnAssumptions().assumptions().add("cut", "ten", "assumption");

        assertThat(notices.assumptions().list()).isEmpty();
    }

    @Test
    void aValueIsQuotedOnOneLineWithoutWhatATerminalWouldObeyAndNotAtLength() {
        assertThat(Notices.quote(" two\n  lines ")).isEqualTo("two lines");
        assertThat(Notices.quote("\u001b[2Jaway\u200f")).isEqualTo("?[2Jaway?");
        assertThat(Notices.quote("x".repeat(60))).isEqualTo("x".repeat(60));
        assertThat(Notices.quote("x".repeat(61))).isEqualTo("x".repeat(60) + "...");
    }

    @Test
    void anInterruptEndsTheTellingOfNotices() {
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> notices.add(NoticeCode.BAD_TEXT, Place.START, "", "", "Wrong."))
                    .isInstanceOf(CancellationException.class);
            assertThat(notices.list()).isEmpty();
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
    }

    @Test
    void anInterruptAfterAnErrorIsNoFault() {
        notices.add(NoticeCode.BAD_TEXT, Place.START, "", "", "Wrong.");

        assertThatThrownBy(() -> notices.keepingWhatIsFound(() -> {
                    throw new CancellationException("interrupted");
                }))
                .isInstanceOf(CancellationException.class);
    }

    private static String value() {
        return refuse().orElseThrow();
    }

    private static Optional<String> refuse() {
        throw new IllegalArgumentException("a refusal that no reader foresaw");
    }
}
