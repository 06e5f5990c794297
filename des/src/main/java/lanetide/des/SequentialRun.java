package lanetide.des;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import lanetide.des.stats.Tally;

/**
 * Runs replications in rounds until a rule is met. The sizes of the rounds depend on the results alone, and of the last
 * round only what the rule needs is kept, so that neither results nor failures depend on the number of threads.
 */
final class SequentialRun<T> {

    private static final int MIN_ROUND = 4;

    private final StoppingRule rule;
    private final Function<T, double[]> measures;
    private final List<T> results = new ArrayList<>();
    private final List<Tally> tallies = new ArrayList<>();

    SequentialRun(StoppingRule rule, Function<T, double[]> measures) {
        this.rule = rule;
        this.measures = measures;
    }

    StoppedRun<T> run(int threads, IntFunction<T> model, IntConsumer onDone) {
        int done = 0;
        while (!isNarrowEnough() && done < rule.cap()) {
            int before = done;
            int round = Math.min(nextRound(), rule.cap() - before);
            List<T> more = Replications.run(
                    round, threads, i -> model.apply(before + i), count -> onDone.accept(before + count));
            done += round;
            more.stream().takeWhile(result -> !isNarrowEnough()).forEach(this::take);
        }
        long projected = isNarrowEnough() ? results.size() : projected();
        return new StoppedRun<>(Collections.unmodifiableList(results), isNarrowEnough(), halfWidth(), projected);
    }

    private void take(T result) {
        double[] values = measures.apply(result);
        if (results.isEmpty()) {
            for (int i = 0; i < values.length; i++) {
                tallies.add(new Tally("measure " + i));
            }
        }
        if (values.length != tallies.size() || values.length == 0) {
            throw new IllegalArgumentException("replication " + results.size() + " has " + values.length
                    + " measures, but all must have the same number, at least 1");
        }
        results.add(result);
        for (int i = 0; i < values.length; i++) {
            tallies.get(i).add(values[i]);
        }
    }

    private boolean isNarrowEnough() {
        return results.size() >= rule.floor() && halfWidth() <= rule.halfWidth();
    }

    private double halfWidth() {
        return tallies.stream()
                .mapToDouble(tally -> tally.meanInterval(rule.level()).halfWidth())
                .max()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** The half-width shrinks with the root of the number of replications. */
    private long projected() {
        double ratio = halfWidth() / rule.halfWidth();
        return (long) Math.ceil(results.size() * ratio * ratio);
    }

    /** Half of what is still missing by the present estimate, so that little is run in vain. */
    private int nextRound() {
        if (results.size() < rule.floor()) {
            return rule.floor();
        }
        return (int) Math.min(Integer.MAX_VALUE, Math.max(MIN_ROUND, (projected() - results.size()) / 2));
    }
}
