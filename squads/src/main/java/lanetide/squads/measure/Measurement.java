package lanetide.squads.measure;

/** Something that could be measured at an event, and would tell which values are true. */
public sealed interface Measurement {
    /**
     * A tape reading.
     *
     * @param lane lane number
     * @param squad squad after whose last game it is taken
     * @param distanceM distance from the foul line (m)
     * @param board board from the right-hand gutter
     */
    record Tape(int lane, String squad, double distanceM, int board) implements Measurement {}

    /**
     * The mean score of a squad.
     *
     * @param squad the squad
     */
    record SquadScore(String squad) implements Measurement {}

    /**
     * By how much a squad scores more in its last game than in its first.
     *
     * @param squad the squad
     */
    record SquadTrend(String squad) implements Measurement {}

    /**
     * Where bowlers of a style lay the ball down in the last game of a squad, as the mean of ten first balls.
     *
     * @param squad the squad
     * @param style the style
     */
    record Laydown(String squad, String style) implements Measurement {}
}
