package lanetide.cli.report;

import java.util.OptionalDouble;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;

/**
 * The length rule: a ball should leave the pattern at its length in feet less 31 (USBC technique page, US Bowler, July
 * 2011).
 */
public final class LengthRule {
    private static final double LESS_FT = 31;

    private LengthRule() {}

    /** The exit board; empty where the rule names none on the lane's outer half. */
    public static OptionalDouble exitBoard(OilPattern pattern) {
        double board = pattern.lengthM() / LaneGeometry.FOOT_M - LESS_FT;
        return board < 1 || board > LaneGeometry.CENTRE_BOARD ? OptionalDouble.empty() : OptionalDouble.of(board);
    }
}
