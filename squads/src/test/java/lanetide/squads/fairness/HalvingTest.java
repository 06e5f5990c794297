package lanetide.squads.fairness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import lanetide.squads.fairness.Halving.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HalvingTest {
    @Test
    void theBetterHalfGoesOnUntilFourAreLeftWhoMeetEverySet() {
        assertThat(Halving.of(11, 8, 20, 40).stages())
                .containsExactly(new Stage(11, 3), new Stage(6, 7), new Stage(4, 20));
        assertThat(Halving.of(11, 8, 20, 40).rounds()).isEqualTo(11 * 3 + 6 * 4 + 4 * 13);
    }

    @Test
    void fourOrFewerAreAllPlayedToTheEnd() {
        assertThat(Halving.of(3, 8, 20, 40).stages()).containsExactly(new Stage(3, 20));
        assertThat(Halving.of(3, 30, 20, 40).stages()).containsExactly(new Stage(3, 30));
    }

    @Test
    void withTheUsualValuesAloneTwoRoundsArePlayedAtLeastSoThatLuckIsKnown() {
        assertThat(Halving.of(3, 1, 1, 40).stages()).containsExactly(new Stage(3, 2));
    }

    @Test
    void nobodyIsPlayedMoreRoundsThanTheEventItself() {
        assertThat(Halving.of(11, 1000, 2, 6).stages())
                .extracting(Stage::rounds)
                .allSatisfy(rounds -> assertThat(rounds).isLessThanOrEqualTo(6));
    }

    @ParameterizedTest
    @CsvSource({"11, 8", "16, 12", "5, 9", "40, 10"})
    void togetherTheyGetAboutWhatTheyWouldIfAllGotTheSame(int candidates, int each) {
        Halving halving = Halving.of(candidates, each, 1, 1000);
        assertThat(halving.rounds()).isBetween(candidates * each * 2 / 3, candidates * each * 5 / 4);
    }

    /** Sixteen candidates, deviation 4, each a step of one better than the next; three tries of the luck. */
    @Test
    void theBestIsChosenMoreOftenThanIfAllGotTheSame() {
        for (long seed = 1; seed <= 3; seed++) {
            Random random = new Random(seed);
            int halved = 0;
            int alike = 0;
            for (int run = 0; run < 2000; run++) {
                halved += best(Halving.of(16, 8, 1, 1000).stages(), random) == 0 ? 1 : 0;
                alike += best(List.of(new Stage(16, 8)), random) == 0 ? 1 : 0;
            }
            assertThat(halved).as("seed %s", seed).isGreaterThan(alike + 100);
        }
    }

    private static int best(List<Stage> stages, Random random) {
        double[] sums = new double[16];
        int[] rounds = new int[16];
        List<Integer> left = IntStream.range(0, 16).boxed().toList();
        for (Stage stage : stages) {
            left = left.stream().limit(stage.candidates()).toList();
            for (int candidate : left) {
                while (rounds[candidate] < stage.rounds()) {
                    sums[candidate] += -candidate + 4 * random.nextGaussian();
                    rounds[candidate]++;
                }
            }
            left = left.stream()
                    .sorted(Comparator.comparingDouble(candidate -> -sums[candidate] / rounds[candidate]))
                    .toList();
        }
        assertThat(Arrays.stream(rounds).sum()).isLessThanOrEqualTo(16 * 8 * 5 / 4);
        return left.get(0);
    }
}
