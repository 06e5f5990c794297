package lanetide.squads.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandicapTest {
    /** Worked by hand; 0.9 times 50 is 45 whatever the last digit of 0.9 in binary. */
    @ParameterizedTest(name = "{1} of {0} less {2} is {3} pins")
    @CsvSource({
        "220, 0.9, 187, 29",
        "200, 0.8, 151, 39",
        "220, 0.9, 170, 45",
        "210, 1.0, 209, 1",
        "200, 0.8, 200, 0",
        "200, 0.8, 231, 0",
        "300, 1.0, 0, 300"
    })
    void isAShareOfWhatTheAverageLacks(int base, double share, int average, int pins) {
        assertThat(new Handicap(base, share).pins(average)).isEqualTo(pins);
    }

    @Test
    void valuesOutsideTheirRangesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Handicap(0, 0.9))
                .withMessageContaining("1 to 300");
        assertThatIllegalArgumentException().isThrownBy(() -> new Handicap(301, 0.9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Handicap(200, 0))
                .withMessageContaining("above 0");
        assertThatIllegalArgumentException().isThrownBy(() -> new Handicap(200, Double.NaN));
    }
}
