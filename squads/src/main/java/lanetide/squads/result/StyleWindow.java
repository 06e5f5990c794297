package lanetide.squads.result;

import lanetide.oilflow.lane.Hand;

/**
 * Where a style should leave the pattern.
 *
 * @param style playing style
 * @param hand delivery side; boards are counted from its gutter
 * @param low outermost exit board whose line is at least 0.9 times as good as the best; NaN if no line meets the pocket
 * @param high innermost such board; NaN if none
 * @param best exit board of the best line; NaN if none
 */
public record StyleWindow(String style, Hand hand, double low, double high, double best) {}
