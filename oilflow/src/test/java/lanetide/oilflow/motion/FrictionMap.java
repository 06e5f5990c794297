package lanetide.oilflow.motion;

import java.util.function.DoubleBinaryOperator;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;

/**
 * A lane whose friction is given from place to place, as worked examples give it. The film serves as the map: a cell
 * holds the coefficient itself, the friction law reads it back, and no oil moves.
 */
final class FrictionMap {
    private static final FrictionLaw READ_BACK = film -> film;

    private final OilFilm film;
    private final RowMarch march;

    /** Friction as a function of board (from the right) and distance in feet. */
    FrictionMap(LaneGrid grid, DoubleBinaryOperator frictionAtBoardAndFeet) {
        film = OilFilm.bare(grid);
        march = new RowMarch(grid);
        for (int column = 0; column < grid.columns(); column++) {
            for (int row = 0; row < grid.rows(); row++) {
                double feet = (row + 0.5) * grid.rowLengthM() / LaneGeometry.FOOT_M;
                film.cellsUm()[column * grid.rows() + row] =
                        frictionAtBoardAndFeet.applyAsDouble(grid.boardOfColumn(column), feet);
            }
        }
    }

    static FrictionMap uniform(double friction) {
        return new FrictionMap(LaneGrid.DEFAULT, (board, feet) -> friction);
    }

    /** The march after the shot. */
    RowMarch roll(Delivery delivery, double radiusM, double gyrationRadiusM) {
        BallSpec ball = new BallSpec(cover(), radiusM, gyrationRadiusM);
        march.read(delivery, Hand.RIGHT, new Contact(ball, READ_BACK, FilmSplit.NONE), film);
        return march;
    }

    private static Coverstock cover() {
        return new Coverstock("test", 1, 0.7, 0, 1e9, "test");
    }
}
