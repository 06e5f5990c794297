package lanetide.oilflow.motion;

import java.util.OptionalDouble;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;

/**
 * Rolls a ball down a lane, row by row of the film's grid, and wears the film under it.
 *
 * <p>A sliding sphere under Coulomb friction: the slip {@code u = v - S} keeps its direction and only its size U falls,
 * {@code dU/dt = -mu g (1 + 1/kappa)}, and {@code v = v_roll + kappa/(1 + kappa) u}; so inside a row only U and x
 * change. With U at 0 the ball rolls straight on. Source: textbook mechanics of a sphere that slides, then rolls;
 * Frohlich, What makes bowling balls hook?, American Journal of Physics 72 (2004). The final direction does not depend
 * on the oil; where the ball turns does. On a lane that is not level the slip turns a little and the ball goes on being
 * pulled aside while it rolls: see {@link Roll}.
 *
 * <p>In every row the contact strip meets the film of the columns under it and the ball's own film one revolution old,
 * and {@link FilmSplit} parts the sum. Each revolution the track steps aside by the flare, so that only the overlapping
 * share of what was taken up one turn ago is met again.
 *
 * <p>One object serves one thread, shot after shot, and allocates nothing per shot. The results of the last shot are
 * read from its getters or taken away by {@link #path}.
 */
public final class RowMarch {
    private final LaneGrid grid;
    private final Roll roll;

    /**
     * A march over films of one grid.
     *
     * @param grid the grid
     */
    public RowMarch(LaneGrid grid) {
        this.grid = grid;
        this.roll = new Roll(grid);
    }

    /**
     * The grid of the films.
     *
     * @return the grid
     */
    public LaneGrid grid() {
        return grid;
    }

    /**
     * Rolls a ball as it is in play, with what the towel has left on it, and leaves the film as it is.
     *
     * @param delivery the ball at the foul line
     * @param hand delivery side
     * @param contact the ball on this lane
     * @param film the lane's film
     */
    public void readInPlay(Delivery delivery, Hand hand, Contact contact, OilFilm film) {
        roll.begin(delivery, hand, contact, film, contact.oilInPlayMl(), false);
        roll.run();
    }

    /**
     * Rolls a clean ball and leaves the film as it is.
     *
     * @param delivery the ball at the foul line
     * @param hand delivery side
     * @param contact the ball on this lane
     * @param film the lane's film
     */
    public void read(Delivery delivery, Hand hand, Contact contact, OilFilm film) {
        roll.begin(delivery, hand, contact, film, 0, false);
        roll.run();
    }

    /**
     * Rolls a ball and wears the film: this is where oil is taken off a lane and laid down again.
     *
     * @param delivery the ball at the foul line
     * @param hand delivery side
     * @param contact the ball on this lane
     * @param film the lane's film, changed by the shot
     * @param oil the oil on the ball, changed by the shot
     */
    public void wear(Delivery delivery, Hand hand, Contact contact, OilFilm film, BallOil oil) {
        roll.begin(delivery, hand, contact, film, oil.onBallMl(), true);
        roll.run();
        oil.add(roll.gainMl());
    }

    /**
     * Where the ball was at a distance.
     *
     * @param distanceM distance from the foul line (m), 0 to 18.288
     * @return distance from the lane edge on the delivery side (m); where it fell into a gutter, the place it fell
     */
    public double positionM(double distanceM) {
        double[] atM = roll.atM;
        if (roll.rowsRun == 0) {
            return atM[0];
        }
        double rowsAlong = Math.min(distanceM / grid.rowLengthM(), roll.rowsRun);
        int row = Math.min((int) rowsAlong, roll.rowsRun - 1);
        return atM[row] + (rowsAlong - row) * (atM[row + 1] - atM[row]);
    }

    /**
     * Where the ball met the pins.
     *
     * @return board from the gutter on the delivery side; below 0.5 or above 39.5 for a gutter ball
     */
    public double arrivalBoard() {
        return LaneGeometry.metresToBoard(roll.atM[roll.rowsRun]);
    }

    /**
     * Whether the ball stayed on the lane.
     *
     * @return false for a gutter ball
     */
    public boolean reachedPins() {
        return roll.rowsRun == grid.rows() && roll.isOnLane();
    }

    /**
     * Angle at which the ball met the pins.
     *
     * @return angle to the lane's axis (rad), positive away from the delivery side
     */
    public double entryAngleRad() {
        return StrictMath.atan2(roll.vxMps, roll.vyMps);
    }

    /**
     * Speed at the pins.
     *
     * @return speed (m/s)
     */
    public double speedMps() {
        return roll.speedMps();
    }

    /**
     * Slip at the pins.
     *
     * @return speed of the contact point over the lane (m/s); 0 once the ball rolls
     */
    public double slipMps() {
        return roll.slipMps;
    }

    /**
     * Time from the foul line to the pins.
     *
     * @return seconds
     */
    public double timeS() {
        return roll.timeS;
    }

    /**
     * Where slipping ended.
     *
     * @return distance from the foul line (m); empty if the ball still slipped at the pins
     */
    public OptionalDouble rollDistanceM() {
        return roll.slipMps > 0 ? OptionalDouble.empty() : OptionalDouble.of(roll.rollDistanceM);
    }

    /**
     * When slipping ended.
     *
     * @return time from the foul line (s); empty if the ball still slipped at the pins
     */
    public OptionalDouble rollTimeS() {
        return roll.slipMps > 0 ? OptionalDouble.empty() : OptionalDouble.of(roll.rollTimeS);
    }

    /**
     * Takes away what a player wants to know of the last shot.
     *
     * @param patternEndM where the pattern ends (m from the foul line)
     * @return the path
     */
    public BallPath path(double patternEndM) {
        double[] atM = roll.atM;
        int outermost = 0;
        for (int row = 1; row <= roll.rowsRun; row++) {
            if (atM[row] < atM[outermost]) {
                outermost = row;
            }
        }
        return new BallPath(
                LaneGeometry.metresToBoard(atM[0]),
                LaneGeometry.metresToBoard(positionM(LaneGeometry.ARROWS_M)),
                LaneGeometry.metresToBoard(positionM(patternEndM)),
                LaneGeometry.metresToBoard(atM[outermost]),
                outermost * grid.rowLengthM(),
                arrivalBoard(),
                entryAngleRad(),
                speedMps(),
                timeS(),
                reachedPins());
    }
}
