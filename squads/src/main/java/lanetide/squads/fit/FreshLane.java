package lanetide.squads.fit;

/**
 * What lies on a freshly oiled lane, of what the sheet says there, by least squares through nothing.
 *
 * @param lane lane number
 * @param tapes tapes that were taken on it
 * @param ratio oil that was read over oil that the sheet says, with the usual fall along the lane where it says none
 * @param error standard deviation of the ratio by the tapes' own errors
 * @param headRatio the same over the first third of the pattern; not a number without tapes there
 * @param endRatio and over the last third
 */
public record FreshLane(int lane, int tapes, double ratio, double error, double headRatio, double endRatio) {}
