package lanetide.cli.scenario.centre;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tapes say something of a pattern whatever it is called, and nothing of another one. */
class PatternMarkTest {
    private static final String SHEET = "pattern:\n  length: 39 ft";

    @Test
    void aPatternIsTheSameWhateverItIsCalled() {
        assertThat(markWith("pattern:\n  name: Long one\n  length: 39 ft"))
                .isEqualTo(markWith(SHEET))
                .isEqualTo(markWith("pattern:\n  name: \"=, ]\"\n  length: 39 ft"));
        assertThat(markWith(SHEET)).matches("[0-9a-f]{64}");
    }

    @ParameterizedTest
    @CsvSource({"length: 39 ft, length: 39.5 ft", "volume: 23 mL, volume: 23.1 mL", "ratio: 4:1, ratio: 4.2:1"})
    void anotherSheetIsAnotherPattern(String from, String to) {
        assertThat(mark(Scenarios.readWith(from, to))).isNotEqualTo(markWith(SHEET));
    }

    @Test
    void aPatternByTapesHasAMarkOfItsOwnThatStays() throws Exception {
        Path file = Scenarios.FOLDER.resolve("taped-lanes.yaml");
        String first = mark(new ScenarioReader(OptionalLong.empty()).read(file.toString(), Files.readAllBytes(file)));
        String again = mark(new ScenarioReader(OptionalLong.of(9)).read(file.toString(), Files.readAllBytes(file)));

        assertThat(first).isEqualTo(again).isNotEqualTo(markWith(SHEET));
    }

    private static String markWith(String pattern) {
        return mark(Scenarios.readWith(SHEET, pattern));
    }

    private static String mark(Reading reading) {
        return PatternMark.of(reading.scenario().orElseThrow().event().pattern());
    }
}
