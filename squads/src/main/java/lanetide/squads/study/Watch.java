package lanetide.squads.study;

import java.util.function.Function;
import lanetide.squads.play.Observers;

/**
 * How one playing of a study is watched, and what is kept of it. Only what is kept stays in memory. One object serves
 * one playing, on the thread that plays it.
 *
 * @param observers who see the lanes, the balls and the events while it goes on
 * @param withWindows whether exit windows are worked out after every game, which takes longer than the play itself
 * @param keep what is kept of its summary; may ask the observers what they saw
 */
public record Watch<T>(Observers observers, boolean withWindows, Function<PlayingSummary, T> keep) {
    /**
     * Nobody watches.
     *
     * @param keep what is kept of the summary
     * @return the watch
     */
    public static <T> Watch<T> none(Function<PlayingSummary, T> keep) {
        return new Watch<>(Observers.NONE, false, keep);
    }

    /**
     * Somebody watches.
     *
     * @param observers who
     * @param keep what is kept of the summary
     * @return the watch, without windows
     */
    public static <T> Watch<T> by(Observers observers, Function<PlayingSummary, T> keep) {
        return new Watch<>(observers, false, keep);
    }
}
