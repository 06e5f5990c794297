package lanetide.oilflow.line;

/**
 * The boards at the end of the pattern over which a player's average shot, laid down where he lays it down, may leave
 * and still hit the pocket. Its edges are where the two farthest misses at the arrows leave the pattern
 * ({@link MissRoom}); an exit that hits between two that miss by less is not looked for. Boards are counted from the
 * gutter on the delivery side.
 *
 * @param lowBoard the outer edge
 * @param highBoard the inner edge, at least {@code lowBoard}
 * @param exitBoard where the average shot on the line itself leaves the pattern, between the two
 * @param played the line
 */
public record ExitWindow(double lowBoard, double highBoard, double exitBoard, Line played) {}
