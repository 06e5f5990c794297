package lanetide.squads.fairness;

/**
 * What a style scores with and without a change of the lanes, in the same seatings with the same luck.
 *
 * @param unchanging mean of the style on lanes that stay as they are laid (pins a game)
 * @param inPlay mean of the style as the lanes change (pins a game)
 * @param fieldUnchanging mean of the whole field on lanes that stay as they are laid (pins a game)
 * @param fieldInPlay mean of the whole field as the lanes change (pins a game)
 */
public record StyleMeans(double unchanging, double inPlay, double fieldUnchanging, double fieldInPlay) {}
