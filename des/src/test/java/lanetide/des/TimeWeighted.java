package lanetide.des;

/**
 * A value that holds from one change to the next, such as the length of a queue, and its average over simulated time:
 * each value counts for as long as it holds.
 */
final class TimeWeighted {

    private final long startMs;
    private long changedMs;
    private double value;
    private double area;

    TimeWeighted(long startMs, double initial) {
        this.startMs = startMs;
        this.changedMs = startMs;
        this.value = initial;
    }

    void set(long timeMs, double newValue) {
        area = area(timeMs);
        value = newValue;
        changedMs = timeMs;
    }

    double value() {
        return value;
    }

    double mean(long untilMs) {
        return area(untilMs) / ((double) untilMs - startMs);
    }

    private double area(long untilMs) {
        return area + value * ((double) untilMs - changedMs);
    }
}
