package lanetide.cli.lines;

import java.util.Optional;
import lanetide.oilflow.line.PlayedLine;

/**
 * What the command tells at a point of the coach's grid, and whether others tell the same. What was not asked at this
 * point is empty.
 *
 * @param point the question
 * @param line the natural line of a right-hander of level scratch; empty if there is none
 * @param leftApart whether a left-hander's is another
 * @param levelApart whether the best or the poorest level has another
 * @param patternApart whether {@code pattern} tells another exit or another window
 */
record GridAnswer(
        GridPoint point,
        Optional<PlayedLine> line,
        Optional<Boolean> leftApart,
        Optional<Boolean> levelApart,
        Optional<Boolean> patternApart) {}
