package lanetide.squads.recondition;

/**
 * Renewing by condition: the state is looked at after every game, and renewed as soon as it has passed a control limit;
 * for more if it has passed the limit of failure too.
 *
 * @param control the control limit
 * @param costPerGame cost of a cycle over its mean length
 * @param meanGames mean length of a cycle (games)
 * @param failShare share of cycles that end beyond the limit of failure
 */
public record ControlLimit(double control, double costPerGame, double meanGames, double failShare) {
    /**
     * On paths that have been observed, each from fresh to the last game looked at. A path that never passes the
     * control limit counts as a cycle that is renewed in time after its last game.
     *
     * @param states the state after each game, by path; at least one path of at least one game
     * @param control the control limit
     * @param failure the limit of failure, at least {@code control}
     * @param planned cost of renewing in time
     * @param failed cost of renewing after a failure
     * @return what the policy gives on these paths
     * @throws IllegalArgumentException if there is no path or a path has no game
     */
    public static ControlLimit onPaths(
            double[][] states, double control, double failure, double planned, double failed) {
        double games = 0;
        int fails = 0;
        for (double[] path : states) {
            if (path.length == 0) {
                throw new IllegalArgumentException("a path must have at least one game, but one has none");
            }
            int last = 0;
            while (last < path.length - 1 && path[last] < control) {
                last++;
            }
            games += last + 1;
            fails += path[last] >= failure ? 1 : 0;
        }
        if (states.length == 0) {
            throw new IllegalArgumentException("a control limit needs at least one path, but there is none");
        }
        double failShare = (double) fails / states.length;
        double meanGames = games / states.length;
        return new ControlLimit(control, cost(failShare, planned, failed) / meanGames, meanGames, failShare);
    }

    private static double cost(double failShare, double planned, double failed) {
        return planned * (1 - failShare) + failed * failShare;
    }
}
