package lanetide.oilflow.line;

import lanetide.oilflow.motion.BallPath;

/**
 * A line as a coach describes it. Boards are counted from the gutter on the delivery side.
 *
 * @param basis how it was chosen
 * @param line where the ball is laid down and where to
 * @param path the way of an average shot on it
 * @param window exit boards over which an average shot laid down there may leave and still hit the pocket
 * @param quality how often it strikes and hits the pocket, over the scatter of the player's release
 * @param missRoom how far an average shot may miss at the arrows
 */
public record PlayedLine(
        LineBasis basis, Line line, BallPath path, ExitWindow window, LineQuality quality, MissRoom missRoom) {}
