package lanetide.des.stats;

/**
 * A value that holds from one change to the next, such as the length of a queue, and its average over simulated time:
 * each value counts for as long as it holds.
 */
public final class TimeWeighted {

    private final long startMs;
    private long changedMs;
    private double value;
    private double area;
    private double min;
    private double max;

    /**
     * @param startMs simulated time in milliseconds from which on the average is taken
     * @param initial the value from then on
     * @throws IllegalArgumentException if {@code initial} is NaN or infinite
     */
    public TimeWeighted(long startMs, double initial) {
        this.startMs = startMs;
        changedMs = startMs;
        value = Checks.finite(initial, "initial");
        min = initial;
        max = initial;
    }

    /**
     * Notes that the value changes.
     *
     * @param timeMs simulated time in milliseconds, not before the previous change
     * @param newValue the value from then on
     * @throws IllegalArgumentException if {@code timeMs} lies before the previous change, or {@code newValue} is NaN or
     *     infinite
     */
    public void set(long timeMs, double newValue) {
        double newArea = area(timeMs);
        value = Checks.finite(newValue, "value");
        area = newArea;
        changedMs = timeMs;
        min = Math.min(min, newValue);
        max = Math.max(max, newValue);
    }

    /**
     * Notes that the value grows by an amount, which may be negative.
     *
     * @throws IllegalArgumentException as {@link #set}
     */
    public void add(long timeMs, double amount) {
        set(timeMs, value + amount);
    }

    /** The value since the last change. */
    public double value() {
        return value;
    }

    /** Smallest value ever set, however short it held. */
    public double min() {
        return min;
    }

    /** Largest value ever set, however short it held. */
    public double max() {
        return max;
    }

    /**
     * Sum of value times duration, in milliseconds times the unit of the value.
     *
     * @param untilMs simulated time in milliseconds, not before the last change
     * @throws IllegalArgumentException if {@code untilMs} lies before the last change
     */
    public double area(long untilMs) {
        if (untilMs < changedMs) {
            throw new IllegalArgumentException(
                    "time is " + untilMs + " ms, but the value last changed at " + changedMs + " ms");
        }
        return area + value * ((double) untilMs - changedMs);
    }

    /**
     * Average of the value over the time from the start.
     *
     * @param untilMs simulated time in milliseconds, after the start and not before the last change
     * @throws IllegalArgumentException if {@code untilMs} lies before the last change, or is not after the start
     */
    public double mean(long untilMs) {
        double areaUntil = area(untilMs);
        if (untilMs == startMs) {
            throw new IllegalArgumentException(
                    "time is " + untilMs + " ms, but a mean over time must end after its start at " + startMs + " ms");
        }
        return areaUntil / ((double) untilMs - startMs);
    }
}
