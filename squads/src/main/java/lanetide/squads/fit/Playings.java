package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.study.Part;
import lanetide.squads.study.Playable;
import lanetide.squads.study.Study;

/** Plays the days under members of an ensemble; no two playings have the same luck. */
final class Playings {
    private final List<FitDay> days;
    private final Map<ValueSet, Playable> known;
    private final RandomStreams streams;
    private final int threads;
    private final IntConsumer onDone;
    private int done;
    private int luck = 1;

    Playings(List<FitDay> days, Map<ValueSet, Playable> known, FitPlan plan, IntConsumer onDone) {
        this.days = days;
        this.known = known;
        this.streams = new RandomStreams(plan.seed());
        this.threads = plan.threads();
        this.onDone = onDone;
    }

    /** What each member says of all readings. */
    List<double[]> play(List<ValueSet> sets) {
        return play(sets, all(sets));
    }

    /** What some members say of all readings: those at these places. */
    List<double[]> play(List<ValueSet> sets, List<Integer> which) {
        return play(sets, which, 1, FitDay::readings).stream()
                .map(times -> means(times.get(0)))
                .toList();
    }

    private static List<Integer> all(List<ValueSet> sets) {
        return IntStream.range(0, sets.size()).boxed().toList();
    }

    /**
     * What each member says, day by day, of all that the suspicions ask, twice; the second time what a set draws of its
     * lanes is luck as well, and is drawn anew.
     */
    List<List<List<double[]>>> playTwice(List<ValueSet> sets) {
        return play(sets, all(sets), 2, day -> day.suspicions().asked());
    }

    private List<List<List<double[]>>> play(
            List<ValueSet> sets, List<Integer> which, int times, Function<FitDay, List<Reading>> asked) {
        MemberDays design = new MemberDays(days, sets, which, known, times, luck, streams);
        luck += times * sets.size();
        int before = done + times * days.size() * (sets.size() - which.size());
        List<double[]> said = new Study(design)
                .play(
                        new Part(0, design.size()),
                        threads,
                        number -> design.reading(number, asked),
                        now -> onDone.accept(before + now));
        done = before + design.size();
        return IntStream.range(0, which.size())
                .mapToObj(member -> IntStream.range(0, times)
                        .mapToObj(time -> IntStream.range(0, days.size())
                                .mapToObj(day -> said.get(design.number(member, time, day)))
                                .toList())
                        .toList())
                .toList();
    }

    private double[] means(List<double[]> saidByDay) {
        List<double[]> means = new ArrayList<>();
        for (int d = 0; d < saidByDay.size(); d++) {
            means.add(means(days.get(d).readings(), saidByDay.get(d)));
        }
        return join(means);
    }

    /** What would be read on the mean where so much is said. */
    static double[] means(List<Reading> readings, double[] said) {
        return IntStream.range(0, said.length)
                .mapToDouble(r -> readings.get(r).mean(said[r]))
                .toArray();
    }

    static double[] join(List<double[]> parts) {
        return parts.stream().flatMapToDouble(DoubleStream::of).toArray();
    }
}
