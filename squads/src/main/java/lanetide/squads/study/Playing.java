package lanetide.squads.study;

/**
 * What the number of a playing stands for.
 *
 * @param number its number in the study, from 0
 * @param luck its luck, from 0: the replication of all streams
 * @param set number of its set of values among those shipped, from 1, or {@link #DEFAULT_SET}
 * @param seating who sits where and on which lanes, from 0, as the design of the study counts it
 */
public record Playing(int number, int luck, int set, int seating) {
    /** The set of values as the event has them. */
    public static final int DEFAULT_SET = 0;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a number is below 0
     */
    public Playing {
        if (number < 0 || luck < 0 || set < 0 || seating < 0) {
            throw new IllegalArgumentException("playing " + number + " with luck " + luck + ", set " + set
                    + " and seating " + seating + ", but none may be below 0");
        }
    }
}
