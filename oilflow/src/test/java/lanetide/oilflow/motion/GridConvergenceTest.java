package lanetide.oilflow.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Finer grids must tell the same story; the usual grid is eight columns a board and one row a foot. */
class GridConvergenceTest {
    private static final Catalogue CATALOGUE = Catalogue.shipped();
    private static final OilPattern PATTERN = OilPattern.of("test", 40 * LaneGeometry.FOOT_M, 26, 3);
    private static final Contact CONTACT = Contact.between(
            BallSpec.of(CATALOGUE.covers().get("medium-reactive")),
            CATALOGUE.surfaces().get("hard-synthetic"));

    @ParameterizedTest(name = "{0} from board {1}")
    @CsvSource({"straight, 8", "stroker, 17", "tweener, 19", "power, 23"})
    void halvingRowsAndColumnsMovesTheExitOfAFreshShotByLessThanATwentiethOfABoard(String style, double laydown) {
        double usual = exitBoard(LaneGrid.DEFAULT, style, laydown);
        assertThat(exitBoard(new LaneGrid(16, 2), style, laydown)).isCloseTo(usual, within(0.05));
        assertThat(exitBoard(new LaneGrid(16, 8), style, laydown)).isCloseTo(usual, within(0.05));
        assertThat(exitBoard(new LaneGrid(8, 2), style, laydown)).isCloseTo(usual, within(0.05));
    }

    /**
     * The contact is as wide on every grid, so the same shots take off the same oil. A column as wide as a board is
     * left out: it blurs a track to eight times its width, and differs by 2.1 %.
     */
    @ParameterizedTest(name = "{0} columns a board")
    @ValueSource(ints = {2, 4, 6, 12, 16, 24})
    void theOilTakenOffDoesNotDependOnTheColumns(int columnsPerBoard) {
        double usual = takenMl(LaneGrid.DEFAULT);
        assertThat(takenMl(new LaneGrid(columnsPerBoard, 1))).isCloseTo(usual, withinPercentage(2));
    }

    @ParameterizedTest(name = "{0} rows a foot")
    @ValueSource(ints = {2, 4, 8})
    void theOilTakenOffDoesNotDependOnTheRows(int rowsPerFoot) {
        double usual = takenMl(LaneGrid.DEFAULT);
        assertThat(takenMl(new LaneGrid(8, rowsPerFoot))).isCloseTo(usual, withinPercentage(2));
    }

    private static double exitBoard(LaneGrid grid, String style, double laydown) {
        RowMarch march = new RowMarch(grid);
        march.read(delivery(style, laydown), Hand.RIGHT, CONTACT, OilFilm.fresh(PATTERN, grid));
        return march.path(PATTERN.lengthM()).exitBoard();
    }

    private static double takenMl(LaneGrid grid) {
        RowMarch march = new RowMarch(grid);
        OilFilm film = OilFilm.fresh(PATTERN, grid);
        for (int i = 0; i < 20; i++) {
            BallOil oil = new BallOil(CONTACT.ball(), BallOil.NO_TOWEL);
            march.wear(delivery("tweener", 15 + 0.4 * i), Hand.RIGHT, CONTACT, film, oil);
        }
        return PATTERN.volumeMl() - film.volumeMl();
    }

    private static Delivery delivery(String name, double laydown) {
        PlayingStyle style = CATALOGUE.styles().get(name);
        double laydownM = LaneGeometry.boardToMetres(laydown);
        return Delivery.of(style.release(), CONTACT.ball().radiusM(), laydownM, style.naturalLaunchRad());
    }
}
