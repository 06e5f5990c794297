package lanetide.oilflow.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Values computed from the equation of Walker and Fetsko, A concept of ink transfer in printing, TAGA (1955). */
class WalkerFetskoSplitTest {
    private static final WalkerFetskoSplit POROUS = new WalkerFetskoSplit(1, 1, 0.4);

    @ParameterizedTest(name = "{0} um: {1}, {2}, {3}, {4}")
    @CsvSource({
        "0.5, 0.197, 0.343, 0.119, 0.620",
        "1,   0.316, 0.493, 0.192, 0.654",
        "2,   0.432, 0.570, 0.272, 0.584",
        "5,   0.497, 0.516, 0.341, 0.505",
        "10,  0.500, 0.460, 0.352, 0.477"
    })
    void aDryBallTakesUpTheShareOfTheEquation(
            double filmUm, double smooth, double porous, double rough, double smoothAndPorous) {
        assertThat(liftedShare(new WalkerFetskoSplit(1, 0, 0.5), filmUm)).isCloseTo(smooth, within(1e-3));
        assertThat(liftedShare(POROUS, filmUm)).isCloseTo(porous, within(1e-3));
        assertThat(liftedShare(new WalkerFetskoSplit(0.3, 1, 0.3), filmUm)).isCloseTo(rough, within(1e-3));
        assertThat(liftedShare(new WalkerFetskoSplit(3, 0.5, 0.45), filmUm)).isCloseTo(smoothAndPorous, within(1e-3));
    }

    /**
     * The same equation's parts with the lane dry: (1 - e^-x)(1 - f)(x - B), computed by hand for k = b = 1, f = 0.4.
     */
    @ParameterizedTest(name = "{0} um: {1}")
    @CsvSource({"0.5, 0.0252", "1, 0.1395", "2, 0.5890", "5, 2.3878"})
    void aWetBallOnADryLaneKeepsWhatItHoldsFast(double broughtUm, double laid) {
        assertThat(POROUS.laneLeftUm(0, broughtUm, 1)).isCloseTo(laid, within(1e-3));
    }

    @Test
    void anEvenSplitWithoutPoresLeavesTwoEqualFilmsAsTheyAre() {
        WalkerFetskoSplit even = new WalkerFetskoSplit(2, 0, 0.5);
        for (double filmUm : new double[] {0.1, 1, 10}) {
            assertThat(even.laneLeftUm(filmUm, filmUm, 1)).isCloseTo(filmUm, within(1e-12));
        }
    }

    @Test
    void withoutPoresAndAtTheRollsOwnShareItIsTheForwardRollSplit() {
        ForwardRollSplit rolls = new ForwardRollSplit(3);
        for (double ratio = 0.1; ratio <= 1.2; ratio += 0.1) {
            WalkerFetskoSplit same = new WalkerFetskoSplit(3, 0, 1 - ForwardRollSplit.exactLaneShare(ratio));
            for (double laneUm = 0; laneUm < 5; laneUm += 0.5) {
                assertThat(same.laneLeftUm(laneUm, 0.7, ratio))
                        .isCloseTo(rolls.laneLeftUm(laneUm, 0.7, ratio), within(5e-4));
            }
        }
    }

    /** Half as much surface holds half as much fast: at ratio 1/2 a film is as a thicker one, twice over. */
    @Test
    void aSlowerSurfaceHoldsLessFast() {
        WalkerFetskoSplit smooth = new WalkerFetskoSplit(1000, 1, 0.3);
        assertThat(smooth.laneLeftUm(2, 0, 0.5)).isCloseTo(smooth.laneLeftUm(4, 0, 1) / 2, within(1e-12));
        assertThat(smooth.laneLeftUm(2, 0, 0)).isCloseTo(0.7 * 2, within(1e-12));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void theLaneNeverKeepsLessThanNothingNorMoreThanThereIs(long seed) {
        RandomGenerator random = new Well19937c(seed);
        for (int i = 0; i < 20_000; i++) {
            WalkerFetskoSplit split = new WalkerFetskoSplit(
                    1e-3 + StrictMath.pow(10, 4 * random.nextDouble() - 2),
                    random.nextBoolean() ? 0 : 20 * random.nextDouble(),
                    random.nextInt(3) == 0 ? random.nextInt(2) : random.nextDouble());
            double lane = random.nextBoolean() ? 0 : StrictMath.pow(10, 4 * random.nextDouble() - 2.5);
            double brought = random.nextBoolean() ? 0 : StrictMath.pow(10, 4 * random.nextDouble() - 2.5);
            double ratio = random.nextInt(5) == 0 ? 0 : 3 * random.nextDouble();
            assertThat(split.laneLeftUm(lane, brought, ratio))
                    .as("seed %d, %s, lane %s, brought %s, ratio %s", seed, split, lane, brought, ratio)
                    .isBetween(0.0, lane + brought);
        }
    }

    @Test
    void constantsOutsideTheirRangesAreRefused() {
        assertThatThrownBy(() -> new WalkerFetskoSplit(0, 1, 0.5)).hasMessageContaining("coverage (1/um) is 0.0");
        assertThatThrownBy(() -> new WalkerFetskoSplit(1, -1, 0.5)).hasMessageContaining("immobilised film (um)");
        assertThatThrownBy(() -> new WalkerFetskoSplit(1, 1, 1.1)).hasMessageContaining("free split is 1.1");
    }

    private static double liftedShare(WalkerFetskoSplit split, double filmUm) {
        return 1 - split.laneLeftUm(filmUm, 0, 1) / filmUm;
    }
}
