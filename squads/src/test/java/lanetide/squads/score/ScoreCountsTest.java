package lanetide.squads.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Published values: C. N. Cooper and R. E. Kennedy, 1990; On-Line Encyclopedia of Integer Sequences, A060853;
 * MathWorld, "Bowling".
 */
class ScoreCountsTest {

    private final ScoreCounts counts = ScoreCounts.ofAllGames();

    @Test
    void thereAreAsManyGamesAsPublished() {
        assertThat(counts.games())
                .isEqualTo(new BigInteger("5726805883325784576"))
                .isEqualTo(BigInteger.valueOf(66).pow(9).multiply(BigInteger.valueOf(241)));
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 20", "2, 210", "3, 1540", "4, 8855", "5, 42504"})
    void theLowestScoresHaveThePublishedCounts(int score, long games) {
        assertThat(counts.gamesScoring(score)).isEqualTo(games);
    }

    @Test
    void theHighestScoresHaveThePublishedCounts() {
        assertThat(IntStream.rangeClosed(288, 300).mapToObj(counts::gamesScoring))
                .extracting(BigInteger::intValueExact)
                .containsExactly(12, 11, 11, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1);
    }

    @Test
    void mostGamesScore77() {
        assertThat(counts.mostCommonScore()).isEqualTo(77);
        assertThat(counts.gamesScoring(77)).isEqualTo(new BigInteger("172542309343731946"));
    }

    /** Mean over all games 125572265/1574694, worked out in exact rationals apart from this program. */
    @Test
    void theMeanOverAllGamesIsExact() {
        assertThat(counts.sumOfScores().multiply(BigInteger.valueOf(1_574_694)))
                .isEqualTo(counts.games().multiply(BigInteger.valueOf(125_572_265)));
    }

    /** Below ten pins there is no mark, so the pins are spread over twenty balls: 19 + s over s ways. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
    void belowTenPinsTheCountIsABinomialCoefficient(int score) {
        assertThat(counts.gamesScoring(score)).isEqualTo(CombinatoricsUtils.binomialCoefficient(19 + score, score));
    }

    @Test
    void bowlingEveryLowGameOnACardFindsTheSameCounts() {
        int[] found = new int[5];
        bowlAllLowGames(List.of(), found);

        assertThat(found).containsExactly(1, 20, 210, 1540, 8855);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 301})
    void aScoreNoGameCanHaveIsRefused(int score) {
        assertThatThrownBy(() -> counts.gamesScoring(score))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.format(Locale.ROOT, "(%d) must be 0 to 300", score));
    }

    private static void bowlAllLowGames(List<Integer> balls, int[] found) {
        TenpinScore card = new TenpinScore();
        balls.forEach(card::roll);
        if (card.isComplete()) {
            found[card.total()]++;
            return;
        }
        int most = Math.min(card.pinsStanding(), found.length - 1 - card.total());
        for (int pins = 0; pins <= most; pins++) {
            List<Integer> longer = new ArrayList<>(balls);
            longer.add(pins);
            bowlAllLowGames(longer, found);
        }
    }
}
