package lanetide.oilflow.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.motion.RefereeMatch.Difference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The march against an adaptive integration of the full equations of motion, and that integration against closed forms.
 */
class RefereeTest {
    private static final List<Difference> ON_WORN_FILMS = RefereeMatch.onWornFilms();
    private static final FrictionLaw READ_BACK = film -> film;
    private static final double KAPPA = Math.pow(2.55 * 0.0254 / 0.1085, 2);

    /** Closed form of a sliding ball (Halliday, Resnick and Walker): t = kappa v/((1+kappa) mu g), v = v0/(1+kappa). */
    @ParameterizedTest(name = "{0} m/s, friction {1}")
    @CsvSource({"8.5, 0.21", "8.1, 0.19", "7.5, 0.12"})
    void theRefereeMeetsTheClosedFormOfASlide(double speedMps, double friction) {
        Delivery delivery = new Delivery(LaneGeometry.WIDTH_M / 2, 0, speedMps, 0, 0);
        AdaptivePath path = AdaptivePath.of(delivery, Hand.RIGHT, 0.4, READ_BACK, even(friction));
        double slideS = 0.4 / 1.4 * speedMps / (friction * 9.80665);
        double slideM = speedMps * slideS - friction * 9.80665 * slideS * slideS / 2;
        assertThat(path.rollDistanceM()).isCloseTo(slideM, within(1e-6));
        assertThat(path.speedMps()).isCloseTo(speedMps / 1.4, within(1e-6));
        double restS = (LaneGeometry.HEAD_PIN_M - slideM) / (speedMps / 1.4);
        assertThat(path.timeS()).isCloseTo(slideS + restS, within(1e-6));
        assertThat(path.arrivalBoard()).isCloseTo(LaneGeometry.CENTRE_BOARD, within(1e-9));
    }

    /** It integrates all components, so that the direction of the rolling ball is a result and not an assumption. */
    @Test
    void theRefereeFindsTheDirectionThatNoFrictionMapChanges() {
        Release release = Release.ofTradeUnits(17.9, 416, 45, 0);
        Delivery delivery = Delivery.of(release, 0.1085, LaneGeometry.boardToMetres(12), Math.toRadians(1.8));
        OilFilm zones = even(0.20);
        for (int column = 0; column < zones.grid().columns(); column++) {
            Arrays.fill(
                    zones.cellsUm(),
                    column * zones.grid().rows(),
                    column * zones.grid().rows() + 40,
                    0.04);
        }
        AdaptivePath path = AdaptivePath.of(delivery, Hand.RIGHT, KAPPA, READ_BACK, zones);
        assertThat(path.rollDistanceM()).isLessThan(LaneGeometry.HEAD_PIN_M);
        assertThat(Math.toDegrees(path.directionRad())).isCloseTo(5.58, within(0.005));
        assertThat(path.arrivalBoard()).isCloseTo(25.2, within(0.05));
        assertThat(path.timeS()).isCloseTo(2.445, within(0.0006));
    }

    @Test
    void onFreshFilmsTheMarchIsWithinAHundredthOfABoardAndTwoHundredthsOfADegree() {
        Difference usual = RefereeMatch.onFreshFilms().get(0);
        assertThat(usual.pinShots()).as(usual.toString()).isGreaterThan(RefereeMatch.SHOTS / 2);
        assertThat(usual.gutterShotsOfOneOnly()).as(usual.toString()).isZero();
        assertThat(usual.worstBoards()).as(usual.toString()).isLessThan(0.01);
        assertThat(usual.worstDeg()).as(usual.toString()).isLessThan(0.02);
    }

    /**
     * Worn films change from column to column, and a ball crosses several within a row of a foot, where the march looks
     * once. What is left between them must then vanish with the square of the distance between two looks at the same
     * film; how much it is with the usual rows stands in the validation table.
     */
    @Test
    void onWornFilmsTheDifferenceVanishesAsTheMarchLooksMoreOften() {
        for (int i = 1; i < ON_WORN_FILMS.size(); i++) {
            assertThat(ON_WORN_FILMS.get(i).rmsBoards())
                    .as("%s", ON_WORN_FILMS)
                    .isLessThan(ON_WORN_FILMS.get(i - 1).rmsBoards() / 2.5);
        }
        Difference finest = ON_WORN_FILMS.get(ON_WORN_FILMS.size() - 1);
        assertThat(finest.gutterShotsOfOneOnly()).as(finest.toString()).isZero();
        assertThat(finest.rmsBoards()).as(finest.toString()).isLessThan(0.01);
        assertThat(finest.worstDeg()).as(finest.toString()).isLessThan(0.02);
    }

    /**
     * The usual rows scatter shots but push them neither in nor out: the mean stays within three standard errors of
     * nothing.
     */
    @Test
    void onWornFilmsTheUsualRowsFavourNoSide() {
        Difference usual = ON_WORN_FILMS.get(0);
        double standardError = usual.rmsBoards() / Math.sqrt(usual.pinShots());
        assertThat(usual.meanBoards()).as(usual.toString()).isCloseTo(0, within(3 * standardError));
    }

    private static OilFilm even(double friction) {
        OilFilm film = OilFilm.bare(LaneGrid.DEFAULT);
        Arrays.fill(film.cellsUm(), friction);
        return film;
    }
}
