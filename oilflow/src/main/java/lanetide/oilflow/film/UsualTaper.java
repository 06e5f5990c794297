package lanetide.oilflow.film;

import lanetide.oilflow.lane.LaneGeometry;

/**
 * Between which boards the film of a pattern rises, where its sheet does not say so.
 *
 * <p>To a ratio of 3:1 it rises from board 5 to board 14, as on a published pattern of 1.98:1. From 5:1 on it rises as
 * house patterns do, from about board 8.5 to board 13.5 on 40 ft: dry from the gutter to the second arrow, oil from
 * there on (common practice, no source; the governing body's older ratio compares the film between the second arrows
 * with that from the gutter to about board 10). There its foot moves three quarters of a board with every foot of
 * length, as the length rule's board does with one, between boards 5 and 12. In between the two are blended. Slope and
 * limits are chosen so that lines on a grid of conditions leave the pattern near the length rule.
 */
public final class UsualTaper {
    private static final double LAST_SPORT_RATIO = 3;
    private static final double FIRST_HOUSE_RATIO = 5;

    private static final double SPORT_FROM_BOARD = 5;
    private static final double SPORT_BOARDS = 9;

    private static final double HOUSE_FROM_BOARD = 8.5;
    private static final double HOUSE_BOARDS = 5;
    private static final double HOUSE_AT_FT = 40;
    private static final double HOUSE_BOARDS_A_FOOT = 0.75;
    private static final double OUTERMOST_HOUSE_BOARD = 5;
    private static final double INNERMOST_HOUSE_BOARD = 12;

    private UsualTaper() {}

    /**
     * The board from which the film rises.
     *
     * @param ratio inside over outside, 1 to 14
     * @param lengthM where the oil ends (m from the foul line)
     * @return board from the gutter, 5 to 12
     */
    public static double fromBoard(double ratio, double lengthM) {
        double moved = HOUSE_FROM_BOARD + HOUSE_BOARDS_A_FOOT * (lengthM / LaneGeometry.FOOT_M - HOUSE_AT_FT);
        double house = Math.max(OUTERMOST_HOUSE_BOARD, Math.min(INNERMOST_HOUSE_BOARD, moved));
        return Math.max(blend(ratio, SPORT_FROM_BOARD, house), outermostBoard(ratio));
    }

    /**
     * How far it rises.
     *
     * @param ratio inside over outside, 1 to 14
     * @return boards from the start of the taper to its end, 5 to 9
     */
    public static double boards(double ratio) {
        return blend(ratio, SPORT_BOARDS, HOUSE_BOARDS);
    }

    private static double blend(double ratio, double sport, double house) {
        double way = (ratio - LAST_SPORT_RATIO) / (FIRST_HOUSE_RATIO - LAST_SPORT_RATIO);
        return sport + Math.max(0, Math.min(1, way)) * (house - sport);
    }

    /** So far out a taper may begin and still leave a tenth of the oil over boards 3 to 7 to the flat outside. */
    private static double outermostBoard(double ratio) {
        return 7.5 - Math.sqrt(0.9 * 2 * 5 * boards(ratio) / ratio);
    }
}
