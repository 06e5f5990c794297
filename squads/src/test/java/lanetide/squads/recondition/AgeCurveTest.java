package lanetide.squads.recondition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AgeCurveTest {
    private static final int STYLES = 2;

    /** Example of the function isoreg in the documentation of R; 3 is the mean of the last seven. */
    @Test
    void valuesThatFallArePooledWithThoseBeforeThem() {
        double[] ones = IntStream.range(0, 9).mapToDouble(i -> 1).toArray();
        assertThat(Isotonic.rising(new double[] {1, 0, 4, 3, 3, 5, 4, 2, 0}, ones))
                .containsExactly(new double[] {0.5, 0.5, 3, 3, 3, 3, 3, 3, 3}, within(1e-12));
        assertThat(Isotonic.rising(new double[] {4, 1}, new double[] {1, 2}))
                .containsExactly(new double[] {2, 2}, within(1e-12));
    }

    @Test
    void whatWeighsNothingTakesTheValueBeforeIt() {
        assertThat(Isotonic.rising(new double[] {9, 1, 9, 3}, new double[] {0, 1, 0, 1}))
                .containsExactly(0, 1, 1, 3);
    }

    /** One style loses ten pins on any oil, the other none; at one age it has nine games of ten, at the next one. */
    @Test
    void whoPlaysAtAnAgeIsNotWhatTheAgeDoes() {
        List<BlockPlaying> playings = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            playings.add(new BlockPlaying(
                    new double[][] {{-90, 0}, {-10, 0}}, new int[][] {{9, 1}, {1, 9}}, new LaneLooks.Look[0][][]));
        }
        double[] spread = new AgeCurve(playings, 2, STYLES, 1).spreadPins();
        assertThat(spread[0]).isCloseTo(spread[1], within(1e-12));
        assertThat(spread[0]).isCloseTo(Math.sqrt(50), within(1e-12));
    }

    @Test
    void theNoiseOfFindingItIsNoChange() {
        Random random = new Random(4);
        double sum = 0;
        for (int run = 0; run < 50; run++) {
            List<BlockPlaying> playings = noisy(random, 12, 1, 20, set -> 0.0);
            double[] spread = new AgeCurve(playings, 12, 1, 10).spreadPins();
            sum += spread[5] * spread[5];
        }
        // Unless it is taken off, the square of the mean of twenty values of deviation ten is five, on the mean.
        // A square below nought counts as nought, so that about half of it is left.
        assertThat(sum / 50).isLessThan(3.5);
    }

    @Test
    void aSetUnderWhichScoresChangeTwiceAsMuchHasTwiceTheCurve() {
        List<BlockPlaying> playings = noisy(new Random(5), 24, 1, 40, set -> set % 2 == 0 ? 10.0 : 20.0);
        AgeCurve curve = new AgeCurve(playings, 24, 1, 20);
        double[] all = curve.spreadPins();
        assertThat(all[12]).isCloseTo(Math.sqrt((100 + 400) / 2.0), within(2.0));
        for (int set = 0; set < 20; set++) {
            assertThat(curve.spreadPins(set)[12]).as("set %s", set).isCloseTo(set % 2 == 0 ? 10 : 20, within(4.0));
        }
    }

    private static List<BlockPlaying> noisy(
            Random random, int games, int styles, int playings, IntToDoubleFunction ofSet) {
        List<BlockPlaying> all = new ArrayList<>();
        for (int i = 0; i < playings; i++) {
            double[][] change = new double[games][styles];
            int[][] count = new int[games][styles];
            for (int age = 0; age < games; age++) {
                change[age][0] = -ofSet.applyAsDouble(i % 20) + 10 * random.nextGaussian();
                count[age][0] = 1;
            }
            all.add(new BlockPlaying(change, count, new LaneLooks.Look[0][][]));
        }
        return all;
    }

    @Test
    void whatCostsTheSameLiesAroundTheBestWithoutAGap() {
        Optimum best = CyclePolicy.growingLoss(10, new double[] {0, 1, 2, 3, 3.4, 4.4, 9, 9});
        assertThat(best.games()).isEqualTo(5);
        assertThat(best.rates().get(4)).isCloseTo(19.4 / 5, within(1e-12));
        assertThat(best.flat(0.05)).isEqualTo(new Interval.Flat(4, 6, best.costPerGame() * 1.05 - best.costPerGame()));
        assertThat(best.flat(0).from()).isEqualTo(5);
        assertThat(best.flat(0).to()).isEqualTo(5);
    }
}
