package lanetide.oilflow.lane;

/**
 * Fixed measures of a tenpin lane.
 *
 * <p>Source: USBC, Equipment Specifications and Certifications Manual (60 ft foul line to head pin, 41.5 in wide within
 * half an inch, 12 in between pin centres), as quoted by the pages that print them; 39 boards: Hooper, Int. J. Sports
 * Science and Coaching (2024), introduction.
 */
public final class LaneGeometry {
    /** Metres in a foot, exact. */
    public static final double FOOT_M = 0.3048;

    /** Number of boards across the lane. */
    public static final int BOARDS = 39;

    /** Width of the lane (m). */
    public static final double WIDTH_M = 41.5 * 0.0254;

    /** Width of one board (m). */
    public static final double BOARD_M = WIDTH_M / BOARDS;

    /** Foul line to the centre of the head-pin spot (m). */
    public static final double HEAD_PIN_M = 60 * FOOT_M;

    /** Foul line to where the arrows are read (m): the customary nominal 15 ft (common practice, no source). */
    public static final double ARROWS_M = 15 * FOOT_M;

    /** Where the heads are taken to end, at the arrows (common practice, no source: some say 20 ft). */
    public static final double HEADS_END_M = ARROWS_M;

    /** Board in the middle of the lane, from either gutter. */
    public static final double CENTRE_BOARD = (BOARDS + 1) / 2.0;

    private LaneGeometry() {}

    /**
     * Position of a board.
     *
     * @param board board number counted from a gutter; whole numbers are board centres, fractions lie between
     * @return distance from that gutter's lane edge (m)
     */
    public static double boardToMetres(double board) {
        return (board - 0.5) * BOARD_M;
    }

    /**
     * Board at a position.
     *
     * @param metres distance from a lane edge (m)
     * @return board number counted from that edge; 0.5 is the edge itself
     */
    public static double metresToBoard(double metres) {
        return metres / BOARD_M + 0.5;
    }
}
