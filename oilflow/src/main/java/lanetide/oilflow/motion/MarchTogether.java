package lanetide.oilflow.motion;

import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;

/**
 * Rolls a few balls side by side over a film that stays as it is, all of them over one row before any over the next.
 *
 * <p>A shot is one chain of rows, each waiting for the speed of the row before; a processor works on several such
 * chains at once and is done sooner than with one after the other. Each ball does exactly what {@link RowMarch#read}
 * lets it do. One object serves one thread and allocates nothing per shot.
 */
public final class MarchTogether {
    /** Balls that keep a processor busy; more gain nothing. */
    public static final int BALLS = 4;

    private final Roll[] rolls = new Roll[BALLS];
    private int set;

    /**
     * A march over films of one grid.
     *
     * @param grid the grid
     */
    public MarchTogether(LaneGrid grid) {
        for (int i = 0; i < BALLS; i++) {
            rolls[i] = new Roll(grid);
        }
    }

    /** Clears the foul line. */
    public void clear() {
        set = 0;
    }

    /**
     * Puts one more ball on the foul line; its results have the number of balls put there before.
     *
     * @param delivery the ball at the foul line
     * @param hand delivery side
     * @param contact the ball on this lane
     * @param film the lane's film
     * @param oilOnBallMl oil on the ball (mL)
     */
    public void add(Delivery delivery, Hand hand, Contact contact, OilFilm film, double oilOnBallMl) {
        rolls[set].begin(delivery, hand, contact, film, oilOnBallMl, false);
        set++;
    }

    /** Rolls the balls that were put on the foul line. */
    public void run() {
        boolean rolling = true;
        while (rolling) {
            rolling = false;
            for (int i = 0; i < set; i++) {
                if (rolls[i].isUnderWay()) {
                    rolls[i].step();
                    rolling = true;
                }
            }
        }
    }

    /**
     * Where a ball met the pins.
     *
     * @param ball its number from 0
     * @return board from the gutter on the delivery side; below 0.5 or above 39.5 for a gutter ball
     */
    public double arrivalBoard(int ball) {
        Roll roll = rolls[ball];
        return LaneGeometry.metresToBoard(roll.atM[roll.rowsRun]);
    }

    /**
     * Angle at which a ball met the pins.
     *
     * @param ball its number from 0
     * @return angle to the lane's axis (rad), positive away from the delivery side
     */
    public double entryAngleRad(int ball) {
        return StrictMath.atan2(rolls[ball].vxMps, rolls[ball].vyMps);
    }

    /**
     * Speed of a ball at the pins.
     *
     * @param ball its number from 0
     * @return speed (m/s)
     */
    public double speedMps(int ball) {
        return rolls[ball].speedMps();
    }
}
