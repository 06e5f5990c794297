package lanetide.squads.fit;

import lanetide.squads.measured.When;

/** What may have happened to readings that do not belong. */
public sealed interface Explanation {
    /**
     * The readings of two lanes taken at one time are each other's.
     *
     * @param when when they were taken
     * @param lane one of the lanes
     * @param other the other
     */
    record LanesSwapped(When when, int lane, int other) implements Explanation {}

    /**
     * Boards of a lane were counted from the other gutter.
     *
     * @param when when they were taken
     * @param lane the lane
     */
    record SidesSwapped(When when, int lane) implements Explanation {}

    /**
     * All tapes of one time are in another unit.
     *
     * @param when when they were taken
     * @param times by what they were multiplied so
     */
    record OtherUnit(When when, double times) implements Explanation {}

    /**
     * The tapes were taken at another time.
     *
     * @param when when they are said to have been taken
     * @param other when it would fit
     */
    record OtherTime(When when, When other) implements Explanation {}

    /**
     * The tapes of one time were taken on fresh oil of a pattern of another length.
     *
     * @param when when they were taken
     * @param longerM by how much longer it is than that of the scenario (m), below 0 if shorter
     */
    record OtherPattern(When when, double longerM) implements Explanation {}

    /**
     * One reading is wrong by itself.
     *
     * @param reading the reading
     */
    record OneReading(Reading reading) implements Explanation {}
}
