package lanetide.squads.bowler;

import lanetide.oilflow.line.Line;

/**
 * A ball for full racks as its owner knows it from practice on the fresh pattern elsewhere.
 *
 * @param start the line he would begin with
 * @param feel what its balls do on that line
 * @param friction dry friction of its cover relative to a medium one
 */
public record KnownBall(Line start, LineFeel feel, double friction) {}
