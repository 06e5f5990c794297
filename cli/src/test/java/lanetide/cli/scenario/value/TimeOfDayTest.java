package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;

import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimeOfDayTest {
    private final Notices notices = new Notices("test.yaml");
    private final Value value = Yaml.value("\"19:30\"", "", notices);

    @ParameterizedTest
    @CsvSource({"00:00, 0", "19:30, 1170", "23:59, 1439", "day 1 08:00, 480", "day 2 00:00, 1440", "day 31 23:59, 44639"
    })
    void aTimeIsReadAndWrittenAsMinutesFromMidnightOfTheFirstDay(String written, long minutes) {
        assertThat(TimeOfDay.read(written, value)).contains(minutes * 60_000);
        assertThat(TimeOfDay.write(minutes * 60_000)).isEqualTo(written.replace("day 1 ", ""));
        assertThat(notices.list()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"24:00", "12:60", "day 0 12:00", "day 32 12:00", "7 pm", "12.30", "day 2"})
    void aTimeThatNoClockShowsIsRefused(String written) {
        assertThat(TimeOfDay.read(written, value)).isEmpty();
        assertThat(notices.list()).extracting(Notice::code).containsExactly(NoticeCode.BAD_TIME);
    }

    @Test
    void aTimeIsWrittenToTheNearestMinute() {
        assertThat(TimeOfDay.write(60_000 * 10 + 29_999)).isEqualTo("00:10");
        assertThat(TimeOfDay.write(60_000 * 10 + 30_000)).isEqualTo("00:11");
        assertThat(TimeOfDay.write(TimeOfDay.DAY_MS - 30_000)).isEqualTo("day 2 00:00");
    }
}
