package lanetide.squads.result;

import lanetide.oilflow.ball.Release;
import lanetide.oilflow.line.Line;

/**
 * What one ball did.
 *
 * @param meant the line the bowler meant
 * @param thrown the line on which it left his hand
 * @param release how it left his hand
 * @param timeS time to the pins, or to where it left the lane (s)
 * @param reachedPins whether it came to the pins on the lane
 * @param arrivalBoard where it met them; undefined if it did not reach them
 * @param entryRad its angle there (rad), positive away from the bowler's own gutter; undefined if it did not reach them
 */
public record ThrownBall(
        Line meant,
        Line thrown,
        Release release,
        double timeS,
        boolean reachedPins,
        double arrivalBoard,
        double entryRad) {}
