package lanetide.cli.lines;

import java.util.Optional;
import lanetide.cli.report.ConstantName;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.LineBasis;
import lanetide.oilflow.line.NearestLine;
import lanetide.oilflow.line.PlayedLine;

/**
 * Where a kind of bowler starts on a surface.
 *
 * @param surface the lane
 * @param kind who
 * @param basis how the line was chosen
 * @param line the line; empty if none meets the pocket
 * @param change the ball to take instead of moving; empty if none gains enough, or there is no line
 * @param nearest what comes nearest to the pocket; present where there is no natural line
 */
public record StartLine(
        LaneSurface surface,
        Kind kind,
        LineBasis basis,
        Optional<PlayedLine> line,
        Optional<BallChange> change,
        Optional<NearestLine> nearest) {
    /** The basis as answers write it. */
    String basisName() {
        return ConstantName.of(basis).replace('_', '-');
    }
}
