package lanetide.oilflow.line;

import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.motion.Contact;

/**
 * All that a line's quality depends on besides the lane.
 *
 * @param style how he throws
 * @param spread how far his shots scatter
 * @param hand delivery side
 * @param contact his ball on this lane's surface
 */
public record Player(PlayingStyle style, ReleaseSpread spread, Hand hand, Contact contact) {}
