package lanetide.oilflow.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.BallCore;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.ForwardRollSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The split law as the march applies it, turn after turn, under a ball that keeps its speed ratio because nothing
 * brakes it. Expected values are computed from Coyle, Macosko and Scriven (1986) turn by turn.
 */
class SplitUnderTheBallTest {
    private static final LaneGrid FINE = new LaneGrid(8, 8);
    private static final double MIDDLE_M = 156.5 * FINE.columnWidthM();
    private static final int MIDDLE_COLUMN = 156;
    private static final double TURN_M = 2 * Math.PI * BallCore.DEFAULT.radiusM();

    @Test
    void aBallWithoutFlareLeaves758Then942Then986ThousandthsBehindIt() {
        OilFilm film = constantFilm(FINE.rows());
        wear(film, 1, 0.5);
        double[] left = {0.758, 0.942, 0.986, 0.997};
        for (int turn = 0; turn < left.length; turn++) {
            assertThat(inMiddleOfTurn(film, turn, 0.5)).as("turn %d", turn + 1).isCloseTo(left[turn], within(1e-3));
        }
    }

    @Test
    void aBallThatFlaresFullyLiftsTheSameFromStartToEnd() {
        OilFilm film = constantFilm(FINE.rows());
        wear(film, 0, 0.5);
        for (int turn = 0; turn < 10; turn++) {
            assertThat(inMiddleOfTurn(film, turn, 0.5)).as("turn %d", turn + 1).isCloseTo(0.758, within(1e-3));
        }
    }

    /**
     * The ball leaves the oil saturated, with a film of r^0.65 times the lane's, and lays it down on the dry lane
     * behind.
     */
    @ParameterizedTest(name = "at {0}: {1}, {2}, {3} of the ball''s film")
    @CsvSource({"0.8, 0.473, 0.193, 0.079", "0.6, 0.419, 0.126, 0.038", "1.0, 0.5, 0.25, 0.125"})
    void carrydownFadesTurnByTurn(double ratio, double first, double second, double third) {
        int oiledRows = (int) Math.round(30 * LaneGeometry.FOOT_M / FINE.rowLengthM());
        OilFilm film = constantFilm(oiledRows);
        wear(film, 1, ratio);
        double onBallUm = Math.pow(ratio, 0.65);
        double turnsInOil = oiledRows * FINE.rowLengthM() * ratio / TURN_M;
        double[] laid = {first, second, third};
        for (int turn = 0; turn < 3; turn++) {
            assertThat(inMiddleOfTurn(film, turnsInOil + turn, ratio) / onBallUm)
                    .as("turn %d past the end", turn + 1)
                    .isCloseTo(laid[turn], within(2e-3));
        }
    }

    @Test
    void aBallThatFlaresFullyCarriesNothingDown() {
        int oiledRows = FINE.rows() / 2;
        OilFilm film = constantFilm(oiledRows);
        wear(film, 0, 0.6);
        assertThat(film.volumePastMl(LaneGeometry.HEAD_PIN_M / 2)).isZero();
    }

    private static OilFilm constantFilm(int oiledRows) {
        OilFilm film = OilFilm.bare(FINE);
        for (int column = 0; column < FINE.columns(); column++) {
            for (int row = 0; row < oiledRows; row++) {
                film.cellsUm()[column * FINE.rows() + row] = 1;
            }
        }
        return film;
    }

    private static void wear(OilFilm film, double flareOverlap, double ratio) {
        Coverstock cover = new Coverstock("test", 1, 0.7, flareOverlap, 1e9, "test");
        Contact contact = new Contact(BallSpec.of(cover), filmUm -> 0, new ForwardRollSplit(1000));
        Delivery delivery = new Delivery(MIDDLE_M, 0, 8, 0, 8 * ratio);
        new RowMarch(FINE).wear(delivery, Hand.RIGHT, contact, film, new BallOil(BallSpec.of(cover), BallOil.NO_TOWEL));
    }

    private static double inMiddleOfTurn(OilFilm film, double turn, double ratio) {
        return film.thicknessUm(MIDDLE_COLUMN, (int) ((turn + 0.5) * TURN_M / ratio / FINE.rowLengthM()));
    }
}
