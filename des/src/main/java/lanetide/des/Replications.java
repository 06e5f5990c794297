package lanetide.des;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;

/**
 * Runs a model many times, on several threads, with a result that does not depend on their number: replication i gets
 * the number i and nothing else, and results stand in the order of these numbers. A model that draws from
 * {@link lanetide.des.random.RandomStreams#forReplication} and shares nothing that changes is reproducible.
 */
public final class Replications {

    private Replications() {}

    /**
     * Runs the model for the numbers 0 to {@code replications - 1} and returns when all threads have ended.
     *
     * <p>If a replication fails, no further one is started, the threads of those still running are interrupted, and
     * after all have ended the failure is rethrown. If several fail, the one with the lowest number counts, whatever
     * the number of threads; those with lower numbers than a failed one are always run to their end. If the calling
     * thread is interrupted, all replications are stopped in the same way and its interrupt status is set again.
     *
     * @param replications how often to run the model, at least 1
     * @param threads how many replications to run at a time at most, at least 1
     * @param model makes the result from the number of the replication; called from several threads
     * @param onDone told how many replications are done, 1, 2, 3 and so on; called from several threads, one at a time
     * @return the results in the order of the replications; the list cannot be changed
     * @throws IllegalArgumentException if {@code replications < 1} or {@code threads < 1}
     * @throws CancellationException if the calling thread is interrupted
     */
    public static <T> List<T> run(int replications, int threads, IntFunction<T> model, IntConsumer onDone) {
        requireAtLeastOne(replications, "replications");
        requireAtLeastOne(threads, "threads");
        Batch<T> batch = new Batch<>(Objects.requireNonNull(model, "model"), Objects.requireNonNull(onDone, "onDone"));
        ExecutorService workers = Executors.newFixedThreadPool(Math.min(threads, replications), Replications::worker);
        try {
            return results(batch.submitTo(workers, replications));
        } finally {
            stop(workers);
        }
    }

    /**
     * Runs the model for the numbers 0, 1, 2 and so on until the mean of every measure is known well enough. Results
     * and failures do not depend on the number of threads; a few more replications may be run than are kept.
     *
     * @param rule when it is enough
     * @param threads how many replications to run at a time at most, at least 1
     * @param model as for {@link #run}
     * @param measures what of a result is averaged; as many values for each result, at least one
     * @param onDone as for {@link #run}
     * @return the replications up to the first that is enough, or up to the cap
     * @throws IllegalArgumentException if {@code threads < 1}, or if results have no or unequal numbers of measures
     * @throws CancellationException if the calling thread is interrupted
     */
    public static <T> StoppedRun<T> runUntil(
            StoppingRule rule, int threads, IntFunction<T> model, Function<T, double[]> measures, IntConsumer onDone) {
        return new SequentialRun<>(rule, measures).run(threads, model, onDone);
    }

    /** Waits in the order of the replications, so that the failure met first is the one with the lowest number. */
    private static <T> List<T> results(List<Future<T>> futures) {
        List<T> results = new ArrayList<>(futures.size());
        try {
            for (Future<T> future : futures) {
                results.add(future.get());
            }
        } catch (ExecutionException e) {
            throw unchecked(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw cancelled(results.size(), futures.size(), e);
        }
        return Collections.unmodifiableList(results);
    }

    private static RuntimeException unchecked(Throwable failure) {
        if (failure instanceof Error error) {
            throw error;
        }
        return failure instanceof RuntimeException exception
                ? exception
                : new IllegalStateException("a replication failed: " + failure, failure);
    }

    private static CancellationException cancelled(int done, int replications, InterruptedException cause) {
        CancellationException cancelled =
                new CancellationException("interrupted after " + done + " of " + replications + " replications");
        cancelled.initCause(cause);
        return cancelled;
    }

    /** Returns only when no worker runs any more; an interrupt meanwhile is kept for the caller. */
    private static void stop(ExecutorService workers) {
        workers.shutdownNow();
        boolean interrupted = Thread.interrupted();
        while (!workers.isTerminated()) {
            try {
                workers.awaitTermination(1, TimeUnit.HOURS);
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "replications");
        thread.setDaemon(true);
        return thread;
    }

    private static void requireAtLeastOne(int value, String name) {
        if (value < 1) {
            throw new IllegalArgumentException(name + " is " + value + ", but must be at least 1");
        }
    }

    /** What the workers share. */
    private static final class Batch<T> {

        private final IntFunction<T> model;
        private final IntConsumer onDone;
        private final AtomicInteger lowestFailed = new AtomicInteger(Integer.MAX_VALUE);
        private int done;

        Batch(IntFunction<T> model, IntConsumer onDone) {
            this.model = model;
            this.onDone = onDone;
        }

        List<Future<T>> submitTo(ExecutorService workers, int replications) {
            List<Future<T>> futures = new ArrayList<>(replications);
            for (int i = 0; i < replications; i++) {
                int replication = i;
                futures.add(workers.submit(() -> run(replication)));
            }
            return futures;
        }

        private T run(int replication) {
            if (replication > lowestFailed.get()) {
                throw new CancellationException("an earlier replication has failed");
            }
            try {
                T result = model.apply(replication);
                reportOneDone();
                return result;
            } catch (Throwable failure) {
                lowestFailed.accumulateAndGet(replication, Math::min);
                throw failure;
            }
        }

        private synchronized void reportOneDone() {
            onDone.accept(++done);
        }
    }
}
