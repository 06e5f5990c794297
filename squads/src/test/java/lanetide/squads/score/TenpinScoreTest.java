package lanetide.squads.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TenpinScoreTest {

    /**
     * Source: International Bowling Federation, Universal Playing Rules, 2.1.2 (a foul in frame 6, a split in frame 5).
     */
    @Test
    void theFederationsExampleGameScores180() {
        TenpinScore card = Balls.bowl("X X X 72 8/ F9 X 7/ 9- XX8");

        assertThat(card.frameTotals()).containsExactly(30, 57, 76, 85, 95, 104, 124, 143, 152, 180);
        assertThat(card.total()).isEqualTo(180);
        assertThat(card.isComplete()).isTrue();
    }

    /** Source: STBA playing rules, 1.1.2: the same game with one pin fewer. */
    @Test
    void theAssociationsExampleGameScores179() {
        TenpinScore card = Balls.bowl("X X X 72 8/ F9 X 7/ 9- XX7");

        assertThat(card.frameTotals()).endsWith(152, 179);
    }

    /** 300 is stated by USBC Playing Rules, chapter 2, rule 2; the others are worked out by hand from the same rule. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, delimiter = '|', textBlock = """
            balls                          | score
            XXXXXXXXXXXX                   | 300
            XXXXXXXXXXX9                   | 299
            XXXXXXXXX 9-                   | 267
            XXXXXXXXX 9/X                  | 279
            5/5/5/5/5/5/5/5/5/5/5          | 150
            9/9/9/9/9/9/9/9/9/9/9          | 190
            X 5/ X 5/ X 5/ X 5/ X 5/X      | 200
            5/ X 5/ X 5/ X 5/ X 5/ X5/     | 200
            9-9-9-9-9-9-9-9-9-9-           | 90
            --------------------           | 0
            FFFFFFFFFFFFFFFFFFFF           | 0
            """)
    void aFinishedGameHasTheScoreOfTheRules(String balls, int score) {
        TenpinScore card = Balls.bowl(balls);

        assertThat(card.isComplete()).isTrue();
        assertThat(card.total()).isEqualTo(score);
        assertThat(card.frameTotals()).hasSize(10).endsWith(score);
    }

    /** Source: USBC Playing Rules, chapter 2, rule 2 (double, triple, strike before a spare). */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, delimiter = '|', textBlock = """
            balls   | first frame
            XX 4    | 24
            XX 9    | 29
            XXX     | 30
            X 7/    | 20
            X 72    | 19
            7/ 3    | 13
            7/ X    | 20
            F/ X    | 20
            72      | 9
            """)
    void aFrameCountsItsBonus(String balls, int firstFrame) {
        assertThat(Balls.bowl(balls).frameTotals()).startsWith(firstFrame);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "7", "X", "X7", "XX", "7/"})
    void aFrameThatStillWaitsHasNoTotal(String balls) {
        assertThat(Balls.bowl(balls).frameTotals()).isEmpty();
    }

    @Test
    void theTotalCountsEveryBallAsFarAsItCountsNow() {
        assertThat(Balls.bowl("").total()).isZero();
        assertThat(Balls.bowl("7").total()).isEqualTo(7);
        assertThat(Balls.bowl("7/").total()).isEqualTo(10);
        assertThat(Balls.bowl("7/4").total()).isEqualTo(18);
        assertThat(Balls.bowl("X").total()).isEqualTo(10);
        assertThat(Balls.bowl("XX").total()).isEqualTo(30);
        assertThat(Balls.bowl("XX5").total()).isEqualTo(45);
    }

    @Test
    void theCardSaysWhichBallIsNextAndWhatItFaces() {
        assertNext(Balls.bowl(""), 1, 1, 10);
        assertNext(Balls.bowl("7"), 1, 2, 3);
        assertNext(Balls.bowl("F"), 1, 2, 10);
        assertNext(Balls.bowl("72"), 2, 1, 10);
        assertNext(Balls.bowl("X"), 2, 1, 10);
    }

    @Test
    void theTenthFrameGetsFreshRacksOnlyWhenCleared() {
        String nine = "XXXXXXXXX";
        assertNext(Balls.bowl(nine + "X"), 10, 2, 10);
        assertNext(Balls.bowl(nine + "XX"), 10, 3, 10);
        assertNext(Balls.bowl(nine + "X6"), 10, 3, 4);
        assertNext(Balls.bowl(nine + "XF"), 10, 3, 10);
        assertNext(Balls.bowl(nine + "6/"), 10, 3, 10);
        assertThat(Balls.bowl(nine + "63").isComplete()).isTrue();
        assertThat(Balls.bowl(nine + "X6F").isComplete()).isTrue();
    }

    @Test
    void aFrameIsCompleteWhenNoFurtherBallBelongsToIt() {
        TenpinScore card = Balls.bowl("X 7");

        assertThat(card.frameComplete(1)).isTrue();
        assertThat(card.frameComplete(2)).isFalse();
        assertThat(card.frameComplete(10)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 11, -1})
    void aFrameThatDoesNotExistIsRefused(int frame) {
        TenpinScore card = new TenpinScore();

        assertThatThrownBy(() -> card.frameComplete(frame))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.format(Locale.ROOT, "(%d) must be 1 to 10", frame));
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, delimiter = '|', textBlock = """
            before         | pins | words
            ''             | 11   | Frame 1, ball 1: the pin count (11) must be 0 to 10
            ''             | -1   | Frame 1, ball 1: the pin count (-1) must be 0 to 10
            72 X 6         | 5    | Frame 3, ball 2: the pin count (5) must be 0 to 4
            XXXXXXXXX X6   | 5    | Frame 10, ball 3: the pin count (5) must be 0 to 4
            XXXXXXXXX XX   | 11   | Frame 10, ball 3: the pin count (11) must be 0 to 10
            XXXXXXXXX 3    | 8    | Frame 10, ball 2: the pin count (8) must be 0 to 7
            """)
    void anImpossiblePinCountIsRefusedAndChangesNothing(String before, int pins, String words) {
        TenpinScore card = Balls.bowl(before);
        int total = card.total();

        assertThatThrownBy(() -> card.roll(pins))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(words);
        assertThat(card.total()).isEqualTo(total);
        assertThat(card.isComplete()).isFalse();
    }

    @Test
    void nothingIsBowledAfterTheGame() {
        TenpinScore card = Balls.bowl("9-9-9-9-9-9-9-9-9-9-");

        assertThat(card.frame()).isEqualTo(10);
        for (Runnable late : List.<Runnable>of(() -> card.roll(3), card::foul, card::ballInFrame, card::pinsStanding)) {
            assertThatThrownBy(late::run)
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("complete after 20 balls with a score of 90");
        }
    }

    private static void assertNext(TenpinScore card, int frame, int ball, int pins) {
        assertThat(List.of(card.frame(), card.ballInFrame(), card.pinsStanding()))
                .containsExactly(frame, ball, pins);
    }
}
