package lanetide.oilflow.line;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.pocket.PinCarry;

/**
 * A line as a bowler tells it: on such a lane, with such a ball, it brings his average shot to the pocket. It gives the
 * launch angle away, and the axis rotation, which few have measured.
 *
 * @param line the line
 * @param ball his ball on that lane
 * @param film that lane
 */
public record ToldLine(Line line, Contact ball, OilFilm film) {
    /** Where the search begins: middling for the published bands (assumption). */
    private static final double USUAL_RAD = StrictMath.toRadians(45);

    private static final double STEP_RAD = StrictMath.toRadians(2.5);
    private static final int STEPS = 18;

    /** An average shot has none. */
    private static final ReleaseSpread NO_SCATTER = new ReleaseSpread(0, 0, 0, 0);

    /**
     * The axis rotation under which an average shot on the line meets the pocket.
     *
     * @param finder rolls the balls
     * @param speedMps his ball speed (m/s), 4 to 13
     * @param spinRadps his rev rate (rad/s), 0 to 75
     * @param axisTiltRad his axis tilt (rad), 0 to 1.2
     * @return the one nearest to 45 degrees, from 0 to pi/2 (rad); empty if there is none
     */
    public OptionalDouble axisRotation(LineFinder finder, double speedMps, double spinRadps, double axisTiltRad) {
        DoubleUnaryOperator miss =
                rotationRad -> finder.arrivalBoard(player(speedMps, spinRadps, axisTiltRad, rotationRad), film, line)
                        - PinCarry.POCKET_BOARD;
        double missUsual = miss.applyAsDouble(USUAL_RAD);
        OptionalDouble less = Crossing.first(miss, USUAL_RAD, missUsual, -STEP_RAD, STEPS);
        OptionalDouble more = Crossing.first(miss, USUAL_RAD, missUsual, STEP_RAD, STEPS);
        if (less.isEmpty() || more.isEmpty()) {
            return less.isPresent() ? less : more;
        }
        return USUAL_RAD - less.getAsDouble() <= more.getAsDouble() - USUAL_RAD ? less : more;
    }

    private Player player(double speedMps, double spinRadps, double axisTiltRad, double axisRotationRad) {
        double rotationRad = Math.max(0, Math.min(StrictMath.PI / 2, axisRotationRad));
        PlayingStyle style =
                new PlayingStyle("told", new Release(speedMps, spinRadps, rotationRad, axisTiltRad), 0, "told");
        return new Player(style, NO_SCATTER, Hand.RIGHT, ball);
    }
}
