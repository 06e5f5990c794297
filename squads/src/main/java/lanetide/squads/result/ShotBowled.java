package lanetide.squads.result;

import lanetide.squads.model.Bowler;

/**
 * A ball that was bowled.
 *
 * @param squad squad's name
 * @param group group's name
 * @param bowler who bowled it
 * @param timeMs when it left his hand (ms from midnight before the first day)
 * @param lane lane number
 * @param game game from 1; 0 in practice
 * @param frame frame from 1; 0 in practice
 * @param ball ball of the frame from 1; 0 in practice
 * @param ofSpareBall whether it was his spare ball
 * @param standing pins that stood before it, as bits seen from the bowler's own side, bit 0 for pin 1
 * @param left pins that stood after it
 * @param path what the ball did
 */
public record ShotBowled(
        String squad,
        String group,
        Bowler bowler,
        long timeMs,
        int lane,
        int game,
        int frame,
        int ball,
        boolean ofSpareBall,
        int standing,
        int left,
        ThrownBall path) {}
