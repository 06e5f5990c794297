package lanetide.oilflow.line;

import lanetide.oilflow.ball.Coverstock;

/**
 * Advice to change the ball, given where no small move of the bowler makes his own as good.
 *
 * @param cover cover of the ball to take
 * @param stronger whether its dry friction is above that of the present cover; false: below or alike
 * @param line the line to play it on
 * @param strikeShare share of strikes there, 0 to 1
 * @param gain how much that is above the best the present ball reaches by small moves, at least
 *     {@link LineAdvisor#MIN_GAIN}
 */
public record BallChange(Coverstock cover, boolean stronger, Line line, double strikeShare, double gain) {}
