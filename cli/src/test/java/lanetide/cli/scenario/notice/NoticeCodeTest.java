package lanetide.cli.scenario.notice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class NoticeCodeTest {
    @Test
    void onlyWhatLiesBeyondWhatTheModelWasHeldToMakesAnAnswerDoubtful() {
        assertThat(Arrays.stream(NoticeCode.values()).filter(NoticeCode::isDoubt))
                .containsExactly(
                        NoticeCode.IMPLAUSIBLE_VALUE,
                        NoticeCode.FILM_BEYOND_FRICTION,
                        NoticeCode.NO_LINE_TO_POCKET,
                        NoticeCode.MEANS_UNHEARD_OF)
                .allMatch(code -> code.severity() == Severity.WARNING);
    }

    @Test
    void aCodeIsWrittenInLowerCase() {
        assertThat(NoticeCode.UNKNOWN_KEY.code()).isEqualTo("unknown_key");
    }

    @Test
    void aNoticeAboutAWholeScenarioStandsAtItsStart() {
        Notice notice = Notice.atStart(NoticeCode.NO_LINE_TO_POCKET, "a.yaml", "pattern", "house", "No line.");

        assertThat(notice)
                .isEqualTo(
                        new Notice(NoticeCode.NO_LINE_TO_POCKET, "a.yaml", 1, 1, "pattern", "house", "", "No line."));
        assertThat(notice.severity()).isEqualTo(Severity.WARNING);
    }
}
