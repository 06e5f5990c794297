package lanetide.squads.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import lanetide.des.Replications;
import lanetide.des.StoppedRun;
import lanetide.des.StoppingRule;

/**
 * How a run plays its studies: on how many threads, what of them is known already, and which share of them is its own.
 * What is known is not played again; what is played is kept before anything is made of it. So a run goes on where an
 * earlier one was stopped, and several runs play a study together.
 *
 * <p>Studies are told apart by the name of the step in which a run plays them, and by the order in which the step
 * begins them. That order hangs on the scenario, the seed and what is asked alone, which a checkpoint must belong to.
 * One object serves one step of one run.
 */
public final class Execution {
    private final int threads;
    private final Optional<Checkpoint> checkpoint;
    private final Share share;
    private final String step;
    private final AtomicInteger studies = new AtomicInteger();

    private Execution(int threads, Optional<Checkpoint> checkpoint, Share share, String step) {
        this.threads = threads;
        this.checkpoint = checkpoint;
        this.share = share;
        this.step = step;
    }

    /**
     * A run that plays everything itself and keeps nothing.
     *
     * @param threads threads to play on, at least 1
     * @return the execution
     */
    public static Execution on(int threads) {
        return new Execution(threads, Optional.empty(), Share.ALL, "");
    }

    /**
     * A run that goes on from what is known.
     *
     * @param threads threads to play on, at least 1
     * @param checkpoint what is known, of the same scenario, seed and question
     * @param share what this run plays of the rest
     * @return the execution
     */
    public static Execution from(int threads, Checkpoint checkpoint, Share share) {
        return new Execution(threads, Optional.of(checkpoint), share, "");
    }

    /**
     * The same for one step of the run, which a run with other wishes may leave out.
     *
     * @param name name of the step without blanks, alone in this one
     * @return the execution of its studies
     */
    public Execution step(String name) {
        return new Execution(threads, checkpoint, share, step + name + "/");
    }

    /**
     * Plays a part of the next study.
     *
     * @param part which playings
     * @param kind what is kept of each
     * @param play plays the one of a number, on any thread
     * @param onDone told the number of playings done so far, at first those that were known if there are any
     * @return what is kept, in order of the playings
     * @throws PartPlayedException if playings are left that are not in the share of this run
     */
    <T> List<T> play(Part part, Class<T> kind, IntFunction<T> play, IntConsumer onDone) {
        Kept<T> kept = next(kind);
        Map<Integer, T> done = new HashMap<>();
        List<Integer> missing = new ArrayList<>();
        for (int number = part.from(); number < part.to(); number++) {
            Optional<T> known = kept.find(number);
            int playing = number;
            known.ifPresentOrElse(one -> done.put(playing, one), () -> missing.add(playing));
        }
        if (!done.isEmpty()) {
            onDone.accept(done.size());
        }
        List<Integer> own = missing.stream().filter(share::holds).toList();
        if (!own.isEmpty()) {
            int before = done.size();
            List<T> played = Replications.run(
                    own.size(), threads, i -> kept.played(own.get(i), play), now -> onDone.accept(before + now));
            IntStream.range(0, own.size()).forEach(i -> done.put(own.get(i), played.get(i)));
        }
        if (own.size() < missing.size()) {
            throw new PartPlayedException(done.size(), part.size());
        }
        return IntStream.range(part.from(), part.to()).mapToObj(done::get).toList();
    }

    /** Plays the next study from 0 on until something is known well enough, all of it whatever the share. */
    <T> StoppedRun<T> playUntil(
            StoppingRule rule, Class<T> kind, IntFunction<T> play, Function<T, double[]> measures, IntConsumer onDone) {
        Kept<T> kept = next(kind);
        return Replications.runUntil(
                rule,
                threads,
                number -> kept.find(number).orElseGet(() -> kept.played(number, play)),
                measures,
                onDone);
    }

    private <T> Kept<T> next(Class<T> kind) {
        return new Kept<>(step + studies.getAndIncrement(), checkpoint, new KeptFormat<>(kind));
    }

    /** What is known of one study. */
    private record Kept<T>(String study, Optional<Checkpoint> checkpoint, KeptFormat<T> format) {
        Optional<T> find(int number) {
            return checkpoint.flatMap(known -> known.find(study, number)).map(format::read);
        }

        T played(int number, IntFunction<T> play) {
            T result = play.apply(number);
            checkpoint.ifPresent(known -> known.keep(study, number, format.write(result)));
            return result;
        }
    }
}
