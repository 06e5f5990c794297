package lanetide.squads.unknown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.LaidRatio;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import org.junit.jupiter.api.Test;

class TapedLaneTest {
    private static final OilFilm SHEET =
            OilFilm.fresh(OilPattern.of("test", 40 * LaneGeometry.FOOT_M, 25, 4), LaneGrid.DEFAULT);
    private static final double AT_M = 10 * LaneGeometry.FOOT_M;
    private static final int BOARD = 20;

    private static TapeTaken tape(double distanceM, int board, double times, double error) {
        double units = FilmTapes.units(SHEET, board, distanceM) * times;
        return new TapeTaken(1, new When("A", 0), distanceM, board, units, error, "test");
    }

    /** One tape: closed form of the normal law, share and field together against the error. */
    @Test
    void oneTapeIsBelievedByItsErrorAndFarFromItTheShareAloneIsLeft() {
        double expected = FilmTapes.units(SHEET, BOARD, AT_M);
        double error = 2;
        LaidRatio ratio = new TapedLane(SHEET, List.of(tape(AT_M, BOARD, 1.2, error)), .08, .1).ratio(0);
        double variance = expected * expected * (.0064 + .01) + error * error;
        double weight = .2 * expected * expected / variance;
        assertThat(ratio.at(AT_M, BOARD)).isCloseTo(1 + weight * (.0064 + .01), within(.002));
        assertThat(ratio.at(LaneGeometry.HEAD_PIN_M, 1)).isCloseTo(1 + weight * .0064, within(.001));
    }

    @Test
    void tapesThatReadWhatTheSheetSaysChangeNothingButNarrowTheShare() {
        List<TapeTaken> tapes = List.of(tape(AT_M, 10, 1, .5), tape(AT_M, 20, 1, .5), tape(AT_M, 30, 1, .5));
        TapedLane lane = new TapedLane(SHEET, tapes, .08, .1);
        assertThat(lane.ratio(0).at(AT_M, BOARD)).isCloseTo(1, within(1e-9));
        assertThat(lane.ratio(1).at(AT_M, BOARD)).isBetween(1.01, 1.06);
    }

    @Test
    void aFilmIsLaidByTheRatioOfItsPlace() {
        LaidRatio ratio = new TapedLane(SHEET, List.of(tape(AT_M, BOARD, 1.3, .01)), .08, .1).ratio(0);
        OilFilm film = OilFilm.bare(LaneGrid.DEFAULT);
        film.lay(SHEET, ratio);
        double expected = FilmTapes.units(SHEET, BOARD, AT_M);
        assertThat(FilmTapes.units(film, BOARD, AT_M) / expected).isCloseTo(1.3, within(.02));
        assertThat(FilmTapes.units(film, 2, 1) / FilmTapes.units(SHEET, 2, 1)).isCloseTo(ratio.at(1, 2), within(.01));
    }
}
