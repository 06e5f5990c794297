package lanetide.oilflow.line;

/**
 * How good a line is for a player: averages over the scatter of his release.
 *
 * @param strikeShare share of strikes, 0 to 1
 * @param pocketShare share of pocket hits, 0 to 1
 */
public record LineQuality(double strikeShare, double pocketShare) {}
