package lanetide.squads.result;

/**
 * One line of the day's timetable.
 *
 * @param squad squad it belongs to
 * @param what what happens
 * @param game game number from 1; for a break its number in the squad from 1; 0 for all else
 * @param startMs when it starts (ms from midnight before the first day)
 * @param endMs when the last pair is done with it (ms)
 */
public record TimetableEntry(String squad, Activity what, int game, long startMs, long endMs) {
    /** Kinds of entry. */
    public enum Activity {
        /** Lane machines at work, from the first lane to the last. */
        CONDITIONING,
        /** Practice, until the last ball is back. */
        PRACTICE,
        /** A game, from the first pair's start to the last pair's end; games of different pairs overlap. */
        GAME,
        /** A break, from the first group's start to the last group's end. */
        BREAK
    }
}
