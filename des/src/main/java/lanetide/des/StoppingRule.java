package lanetide.des;

/**
 * When enough replications have been run: as soon as the confidence interval of every mean is narrow enough. Stopping
 * at the first such moment makes the interval a little too narrow, the more so the fewer replications there are; the
 * floor keeps that small (Y. S. Chow and H. Robbins, Annals of Mathematical Statistics 36, 1965).
 *
 * @param halfWidth half the width that is wanted, in the unit of the measure, greater than 0
 * @param level probability of covering, between 0 and 1, such as 0.95
 * @param floor least number of replications, at least 2; ten or more are wise
 * @param cap greatest number of replications, at least {@code floor}
 */
public record StoppingRule(double halfWidth, double level, int floor, int cap) {

    /**
     * @throws IllegalArgumentException unless {@code 0 < halfWidth} and it is finite, {@code 0 < level < 1}, and
     *     {@code 2 <= floor <= cap}
     */
    public StoppingRule {
        if (!(halfWidth > 0 && Double.isFinite(halfWidth))) {
            throw new IllegalArgumentException("halfWidth is " + halfWidth + ", but must be finite and greater than 0");
        }
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("level is " + level + ", but must lie between 0 and 1");
        }
        if (floor < 2 || cap < floor) {
            throw new IllegalArgumentException(
                    "floor (" + floor + ") must be at least 2 and at most cap (" + cap + ")");
        }
    }
}
