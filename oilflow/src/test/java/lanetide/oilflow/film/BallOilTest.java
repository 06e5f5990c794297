package lanetide.oilflow.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import org.junit.jupiter.api.Test;

class BallOilTest {
    private static final BallSpec SLOW_SPONGE = BallSpec.of(new Coverstock("sponge", 1, 0.7, 0.2, 300, "test"));

    @Test
    void aCoverTakesIn63PercentInItsAbsorptionTime() {
        BallOil oil = new BallOil(SLOW_SPONGE, BallOil.NO_TOWEL);
        oil.add(1);
        oil.rest(300);
        assertThat(oil.account().absorbedMl()).isCloseTo(1 - Math.exp(-1), within(1e-12));
        assertThat(oil.onBallMl()).isCloseTo(Math.exp(-1), within(1e-12));
    }

    @Test
    void twoShortRestsAbsorbWhatOneLongRestDoes() {
        BallOil once = new BallOil(SLOW_SPONGE, BallOil.NO_TOWEL);
        BallOil twice = new BallOil(SLOW_SPONGE, BallOil.NO_TOWEL);
        once.add(1);
        twice.add(1);
        once.rest(120);
        twice.rest(50);
        twice.rest(70);
        assertThat(twice.onBallMl()).isCloseTo(once.onBallMl(), within(1e-12));
    }

    @Test
    void theTowelLeavesAFilmOfItsShareOfTheRoughnessHoweverMuchThereWas() {
        BallSpec ball = BallSpec.of(new Coverstock("plastic", 1, 0.2, 0.9, Double.MAX_VALUE, "test"));
        double leftMl = 0.5 * 0.2 * ball.tracksM2();
        for (double brought : new double[] {0.1, 2}) {
            BallOil oil = new BallOil(ball, 0.5);
            oil.add(brought);
            oil.rest(60);
            assertThat(oil.account().wipedMl()).isCloseTo(brought - leftMl, within(1e-12));
            assertThat(oil.account().absorbedMl()).isLessThan(1e-300);
            assertThat(oil.onBallMl()).isCloseTo(leftMl, within(1e-12));
        }
    }

    @Test
    void theTowelTakesNothingFromAFilmThinnerThanItLeaves() {
        BallSpec ball = BallSpec.of(new Coverstock("plastic", 1, 0.2, 0.9, Double.MAX_VALUE, "test"));
        BallOil oil = new BallOil(ball, 0.5);
        oil.add(1e-4);
        oil.rest(60);
        assertThat(oil.account().wipedMl()).isZero();
    }

    @Test
    void theTracksOfABallThatDoesNotFlareAreOneStrip() {
        BallSpec ball = BallSpec.of(new Coverstock("still", 1, 0.2, 1, Double.MAX_VALUE, "test"));
        assertThat(ball.tracksM2()).isCloseTo(2 * Math.PI * ball.radiusM() * BallSpec.CONTACT_M, within(1e-15));
    }

    @Test
    void timeDoesNotRunBackward() {
        BallOil oil = new BallOil(SLOW_SPONGE, 0.7);
        assertThatThrownBy(() -> oil.rest(-1)).hasMessageContaining("time between shots (s) is -1.0");
    }

    @Test
    void anAccountThatDoesNotCloseSaysByHowMuch() {
        OilAccount open = new OilAccount(10, 5, 2, 1, 1, 0.5).plus(OilAccount.EMPTY);
        assertThat(open.relativeError()).isCloseTo(0.05, within(1e-12));
        assertThat(OilAccount.EMPTY.relativeError()).isZero();
    }
}
