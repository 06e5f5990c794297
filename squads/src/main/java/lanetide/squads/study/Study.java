package lanetide.squads.study;

import java.util.List;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import lanetide.des.Replications;
import lanetide.des.StoppedRun;
import lanetide.des.StoppingRule;
import lanetide.squads.play.Setup;
import lanetide.squads.play.TournamentSimulation;
import lanetide.squads.result.BrokenRuleException;
import lanetide.squads.result.EventResult;

/**
 * Plays numbered playings. A playing depends on the design and on its number alone, so that any part of a study can be
 * played by itself, on any number of threads, and joined with the others. This is the one place where events are played
 * over and over.
 *
 * @param design what each number stands for
 */
public record Study(Design design) {
    /**
     * Plays a part and keeps the whole summaries.
     *
     * @param part which playings
     * @param threads threads to play on, at least 1
     * @return their summaries in order
     * @throws IllegalArgumentException if {@code threads < 1}
     */
    public List<PlayingSummary> play(Part part, int threads) {
        return play(part, threads, number -> Watch.ofFilms(summary -> summary), done -> {});
    }

    /**
     * Plays a part and keeps of each playing what is asked for.
     *
     * @param part which playings
     * @param threads threads to play on, at least 1
     * @param watches makes the watch of a playing from its number, on the thread that plays it
     * @param onDone told the number of playings done so far
     * @return what is kept, in order of the playings
     * @throws IllegalArgumentException if {@code threads < 1}
     */
    public <T> List<T> play(Part part, int threads, IntFunction<Watch<T>> watches, IntConsumer onDone) {
        return Replications.run(part.size(), threads, i -> play(part.from() + i, watches), onDone);
    }

    /**
     * Plays a part that an execution may know already, and keeps of each playing what is asked for.
     *
     * @param part which playings
     * @param execution how, as the next study of its run
     * @param kind what is kept of each playing: a record, or an array, of plain data
     * @param watches as above
     * @param onDone told the number of playings done so far, at first those that were known if there are any
     * @return what is kept, in order of the playings
     * @throws PartPlayedException if playings are left that are not in the share of the execution
     */
    public <T> List<T> play(
            Part part, Execution execution, Class<T> kind, IntFunction<Watch<T>> watches, IntConsumer onDone) {
        return execution.play(part, kind, number -> play(number, watches), onDone);
    }

    /**
     * Plays the numbers from 0 on until something is known well enough.
     *
     * @param rule when it is enough
     * @param execution how, as the next study of its run; all playings whatever its share
     * @param kind as above
     * @param watches as above
     * @param measures what is averaged, of what is kept
     * @param onDone told the number of playings done so far
     * @return the playings up to the first that is enough, or up to the cap
     */
    public <T> StoppedRun<T> playUntil(
            StoppingRule rule,
            Execution execution,
            Class<T> kind,
            IntFunction<Watch<T>> watches,
            Function<T, double[]> measures,
            IntConsumer onDone) {
        return execution.playUntil(rule, kind, number -> play(number, watches), measures, onDone);
    }

    private <T> T play(int number, IntFunction<Watch<T>> watches) {
        Playing playing = design.playing(number);
        Watch<T> watch = watches.apply(number);
        Setup setup = design.setup(playing).recording(watch.lanes()).watchedBy(watch.observers());
        return watch.keep().apply(new PlayingSummary(playing, played(setup, playing)));
    }

    private static EventResult played(Setup setup, Playing playing) {
        try {
            return new TournamentSimulation(setup).play();
        } catch (BrokenRuleException e) {
            String label = "playing " + playing.number() + ", luck " + playing.luck();
            String setLabel = ", set of values " + playing.set() + ", seating " + playing.seating();
            throw e.in(label + setLabel);
        }
    }
}
