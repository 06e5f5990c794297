package lanetide.oilflow.lane;

/**
 * The bowler's delivery side. Boards are counted from the gutter on this side, so that a left-hander's line is written
 * as the mirror image of the same right-hander's line.
 */
public enum Hand {
    RIGHT,
    LEFT
}
