package lanetide.squads.study;

import java.util.function.Function;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.Observers;

/**
 * How one playing of a study is watched, and what is kept of it. Only what is kept stays in memory. One object serves
 * one playing, on the thread that plays it.
 *
 * @param observers who see the lanes, the balls and the events while it goes on
 * @param lanes what is written down of the lanes
 * @param keep what is kept of its summary; may ask the observers what they saw
 */
public record Watch<T>(Observers observers, LaneRecords lanes, Function<PlayingSummary, T> keep) {
    /**
     * Nobody watches, and the films of the lanes are written down.
     *
     * @param keep what is kept of the summary
     * @return the watch
     */
    public static <T> Watch<T> ofFilms(Function<PlayingSummary, T> keep) {
        return new Watch<>(Observers.NONE, LaneRecords.FILMS, keep);
    }

    /**
     * Nobody watches, and nothing is written down of the lanes.
     *
     * @param keep what is kept of the summary, which has no lanes
     * @return the watch
     */
    public static <T> Watch<T> ofPlay(Function<PlayingSummary, T> keep) {
        return by(Observers.NONE, keep);
    }

    /**
     * Somebody watches, and nothing is written down of the lanes.
     *
     * @param observers who
     * @param keep what is kept of the summary, which has no lanes
     * @return the watch
     */
    public static <T> Watch<T> by(Observers observers, Function<PlayingSummary, T> keep) {
        return new Watch<>(observers, LaneRecords.NONE, keep);
    }
}
