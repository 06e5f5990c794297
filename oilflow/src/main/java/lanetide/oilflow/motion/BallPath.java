package lanetide.oilflow.motion;

/**
 * What a player wants to know of a shot. Boards are counted from the gutter on the delivery side.
 *
 * @param laydownBoard where the ball touched down
 * @param arrowsBoard where it crossed the arrows
 * @param exitBoard where it left the pattern
 * @param breakpointBoard the outermost board it reached
 * @param breakpointM how far down the lane that was (m)
 * @param arrivalBoard where it met the pins
 * @param entryAngleRad angle to the lane's axis at the pins (rad)
 * @param speedAtPinsMps speed at the pins (m/s)
 * @param timeS time from the foul line to the pins (s)
 * @param reachedPins false for a gutter ball
 */
public record BallPath(
        double laydownBoard,
        double arrowsBoard,
        double exitBoard,
        double breakpointBoard,
        double breakpointM,
        double arrivalBoard,
        double entryAngleRad,
        double speedAtPinsMps,
        double timeS,
        boolean reachedPins) {}
