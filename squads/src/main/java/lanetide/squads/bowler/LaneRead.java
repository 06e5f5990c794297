package lanetide.squads.bowler;

/**
 * What a bowler makes of a lane by one of his balls, as he would say it to those he bowls with.
 *
 * @param moveBoards how far further in than the line he brought to the event he should stand (boards of the feet; below
 *     0 further out)
 * @param variance variance of that by one ball (square boards), at least 0
 */
public record LaneRead(double moveBoards, double variance) {}
