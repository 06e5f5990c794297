package lanetide.squads.study;

import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * A time over all playings of an event.
 *
 * @param meanMs mean (ms from midnight before the first day)
 * @param lowMs time that one playing in twenty is before, by the usual interpolation; the earliest where there are few
 *     (ms)
 * @param highMs time that one playing in twenty is after (ms)
 */
public record TimeSpread(long meanMs, long lowMs, long highMs) {
    private static final double LOW_PERCENT = 5;
    private static final double HIGH_PERCENT = 95;

    /** Of the times in all playings, at least one. */
    static TimeSpread of(double[] timesMs) {
        double sum = 0;
        for (double timeMs : timesMs) {
            sum += timeMs;
        }
        Percentile percentile = new Percentile();
        percentile.setData(timesMs);
        return new TimeSpread(
                Math.round(sum / timesMs.length),
                Math.round(percentile.evaluate(LOW_PERCENT)),
                Math.round(percentile.evaluate(HIGH_PERCENT)));
    }
}
