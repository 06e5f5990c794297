package lanetide.squads.rotation.check;

import java.util.IntSummaryStatistics;
import java.util.stream.IntStream;
import lanetide.squads.rotation.Rotation;

/**
 * Who shares a pair with whom where the two lanes of a pair are filled by two rotations, such as left-lane players who
 * move left and right-lane players who move right.
 */
public final class Encounters {
    private final int[][] times;

    private Encounters(int[][] times) {
        this.times = times;
    }

    /**
     * Counts the encounters of two rotations over the same pairs.
     *
     * @param left who bowls from the left lane
     * @param right who bowls from the right lane
     * @return how often each group of one meets each of the other
     * @throws IllegalArgumentException if the two differ in pairs or games
     */
    public static Encounters of(Rotation left, Rotation right) {
        if (left.pairs() != right.pairs() || left.games() != right.games()) {
            throw new IllegalArgumentException("the two rotations have " + left.pairs() + " and " + right.pairs()
                    + " pairs, " + left.games() + " and " + right.games() + " games; both must be equal");
        }
        int[][] times = new int[left.groups()][right.groups()];
        for (int game = 0; game < left.games(); game++) {
            for (int group = 0; group < left.groups(); group++) {
                for (int met : right.groupsOn(game, left.pairOf(game, group))) {
                    times[group][met]++;
                }
            }
        }
        return new Encounters(times);
    }

    /**
     * How often two groups share a pair.
     *
     * @param left group of the left lanes, counted from zero
     * @param right group of the right lanes, counted from zero
     * @return 0 or more
     */
    public int times(int left, int right) {
        return times[left][right];
    }

    /**
     * How many different groups of the right lanes the groups of the left lanes meet.
     *
     * @return fewest and most
     */
    public IntSummaryStatistics opponents() {
        return IntStream.range(0, times.length)
                .map(group ->
                        (int) IntStream.of(times[group]).filter(met -> met > 0).count())
                .summaryStatistics();
    }
}
