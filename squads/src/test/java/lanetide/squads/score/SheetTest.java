package lanetide.squads.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetTest {

    /**
     * Source: International Bowling Federation, Universal Playing Rules, 2.1.2: a foul in frame 6, a split converted in
     * frame 5.
     */
    @Test
    void theFederationsExampleGameIsWrittenWithItsFoulAndItsSplit() {
        TenpinScore card = Balls.bowl("X X X 72 8");
        card.markSplit();
        Balls.bowl(card, "/ F9 X 7/ 9- XX8");

        assertThat(card.sheet()).isEqualTo("X X X 72 S8/ F9 X 7/ 9- XX8");
        assertThat(card.total()).isEqualTo(180);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "7",
                "X 7",
                "X X X 72 8/ F9 X 7/ 9- XX7",
                "F/ -/ -- FF 9F 9- X X X X9/",
                "X X X X X X X X X XXX",
                "9- 9- 9- 9- 9- 9- 9- 9- 9- XF/",
                "9- 9- 9- 9- 9- 9- 9- 9- 9- 9/X",
                "9- 9- 9- 9- 9- 9- 9- 9- 9- XX"
            })
    void whatIsWrittenIsWhatWasBowled(String sheet) {
        assertThat(Balls.bowl(sheet).sheet()).isEqualTo(sheet);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aSheetBowledAgainGivesTheSameCard(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (ScoringSystem system : ScoringSystem.values()) {
            for (int game = 0; game < 50; game++) {
                ScoreCard card = system.newCard();
                while (!card.isComplete()) {
                    bowl(card, random);
                }

                ScoreCard again = Balls.bowl(system.newCard(), card.sheet());

                assertThat(again.frameTotals()).as(card.sheet()).isEqualTo(card.frameTotals());
                assertThat(again.sheet()).isEqualTo(card.sheet().replace("S", ""));
            }
        }
    }

    private static void bowl(ScoreCard card, SplittableRandom random) {
        int standing = card.pinsStanding();
        int pins = random.nextInt(3) == 0 ? standing : random.nextInt(standing + 1);
        if (random.nextInt(20) == 0) {
            card.foul();
        } else {
            card.roll(pins);
            if (pins > 0 && pins < standing && random.nextInt(4) == 0) {
                card.markSplit();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "X", "-", "F", "7/"})
    void onlyABallThatFelledSomePinsCanLeaveASplit(String balls) {
        TenpinScore card = Balls.bowl(balls);

        assertThatIllegalStateException().isThrownBy(card::markSplit).withMessageContaining("can leave a split");
    }
}
