package lanetide.squads.result;

import java.util.Optional;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;

/**
 * How the typical player of a style would play a lane.
 *
 * @param window where he should leave the pattern
 * @param player who he is
 * @param best the line that the window belongs to; empty if no line meets the pocket
 */
public record TypicalLine(StyleWindow window, Player player, Optional<Line> best) {}
