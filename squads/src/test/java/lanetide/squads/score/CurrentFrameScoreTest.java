package lanetide.squads.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule is from memory: a strike 30, a spare 10 and its own first ball, no further balls in the tenth. */
class CurrentFrameScoreTest {

    /** The example of the International Bowling Federation's traditional rules, scored by the other rule by hand. */
    @Test
    void theFederationsExampleGameScores212() {
        CurrentFrameScore card = Balls.bowl(new CurrentFrameScore(), "X X X 72 8/ F9 X 7/ 9- X");

        assertThat(card.frameTotals()).containsExactly(30, 60, 90, 99, 117, 126, 156, 173, 182, 212);
        assertThat(card.total()).isEqualTo(212);
        assertThat(card.isComplete()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, delimiter = '|', textBlock = """
            balls                | score
            XXXXXXXXXX           | 300
            9/9/9/9/9/9/9/9/9/9/ | 190
            5/5/5/5/5/5/5/5/5/5/ | 150
            X5/X5/X5/X5/X5/      | 225
            9-9-9-9-9-9-9-9-9-9- | 90
            F/F/F/F/F/F/F/F/F/F/ | 100
            -------------------- | 0
            """)
    void everyFrameCountsByItself(String balls, int score) {
        CurrentFrameScore card = Balls.bowl(new CurrentFrameScore(), balls);

        assertThat(card.isComplete()).isTrue();
        assertThat(card.total()).isEqualTo(score);
        assertThat(card.frameTotals()).hasSize(10).endsWith(score);
    }

    @Test
    void aFrameIsDecidedAtOnce() {
        assertThat(Balls.bowl(new CurrentFrameScore(), "X").frameTotals()).containsExactly(30);
        assertThat(Balls.bowl(new CurrentFrameScore(), "X 7").frameTotals()).containsExactly(30);
        assertThat(Balls.bowl(new CurrentFrameScore(), "X 7").total()).isEqualTo(37);
        assertThat(Balls.bowl(new CurrentFrameScore(), "X 7/").frameTotals()).containsExactly(30, 47);
    }

    @Test
    void refusesWhatTheOtherCardRefuses() {
        CurrentFrameScore card = Balls.bowl(new CurrentFrameScore(), "XXXXXXXXX 7");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> card.roll(4))
                .withMessageContaining("Frame 10, ball 2: the pin count (4) must be 0 to 3");
        card.roll(3);
        assertThatIllegalStateException().isThrownBy(card::foul).withMessageContaining("with a score of 287");
    }
}
