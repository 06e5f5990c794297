package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.DoubleStream;
import lanetide.des.Replications;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.study.Playable;

/** Plays the days under members of an ensemble; no two playings have the same luck. */
final class Playings {
    private final List<FitDay> days;
    private final FitPlan plan;
    private final IntConsumer onDone;
    private final AtomicInteger done = new AtomicInteger();
    private int luck = 1;

    Playings(List<FitDay> days, FitPlan plan, IntConsumer onDone) {
        this.days = days;
        this.plan = plan;
        this.onDone = onDone;
    }

    /** What each member says of all readings. */
    List<double[]> play(List<ValueSet> sets) {
        return play(sets, 1).stream().map(times -> times.get(0)).toList();
    }

    /** The same twice; the second time what a set draws of its lanes is luck as well, and is drawn anew. */
    List<List<double[]>> playTwice(List<ValueSet> sets) {
        return play(sets, 2);
    }

    private List<List<double[]>> play(List<ValueSet> sets, int times) {
        int first = luck;
        luck += times * sets.size();
        return Replications.run(
                sets.size(), plan.threads(), i -> said(sets.get(i), first + times * i, times), told -> {});
    }

    private List<double[]> said(ValueSet set, int firstLuck, int times) {
        List<Playable> ready = days.stream().map(day -> day.under(set)).toList();
        List<double[]> all = new ArrayList<>();
        for (int time = 0; time < times; time++) {
            RandomStreams streams = new RandomStreams(plan.seed()).forReplication(firstLuck + time);
            ValueSet drawn = time == 0 ? set : set.drawnBy(set.seed() + time);
            List<double[]> said = new ArrayList<>();
            for (int day = 0; day < ready.size(); day++) {
                said.add(days.get(day).said(ready.get(day), drawn, streams));
                onDone.accept(done.incrementAndGet());
            }
            all.add(join(said));
        }
        return all;
    }

    double[] join(List<double[]> parts) {
        return parts.stream().flatMapToDouble(DoubleStream::of).toArray();
    }
}
