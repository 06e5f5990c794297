package lanetide.cli.scenario.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
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

    private static Optional<String> refuse() {
        throw new IllegalArgumentException("a refusal that no reader foresaw");
    }
}
