package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.Holm;
import lanetide.des.stats.NestedMean;
import lanetide.des.stats.Tally;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.SquadResult;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Part;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Repeated;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;

/**
 * Plays two events as they are planned, with their breaks, changes of the line-up and incidents, and with the same luck
 * for bowlers of the same squad and name and for lanes of the same number, and says what differs and whether that is
 * real.
 */
public final class EventComparison {
    private static final double LEVEL = 0.95;
    private static final double ALPHA = 0.05;
    private static final double MS_PER_MINUTE = 60_000;
    private static final int MIN_REPLICATIONS = 2;

    private EventComparison() {}

    /**
     * Compares two events; the result does not depend on the number of threads.
     *
     * @param a the first event
     * @param b the second event
     * @param seed master seed of all chance
     * @param replications how often each is played, at least 2
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return what was compared, always in the same order
     * @throws IllegalArgumentException if {@code replications < 2}
     */
    public static List<Difference> run(Event a, Event b, long seed, int replications, int threads, IntConsumer onDone) {
        return run(a, b, 1, seed, replications, Execution.on(threads), onDone);
    }

    /**
     * The same under sets of values, which the playings of both go through in turn.
     *
     * @param a the first
     * @param b the second
     * @param sets number of sets, at least 1; with 1 all values are as usual
     * @param seed master seed of all chance
     * @param replications how often each is played, at least 2
     * @param execution how, as the next studies of its run
     * @param onDone told the number of playings done so far, of both together
     * @return what was compared, always in the same order
     * @throws IllegalArgumentException as above
     */
    public static List<Difference> run(
            Event a, Event b, int sets, long seed, int replications, Execution execution, IntConsumer onDone) {
        if (replications < MIN_REPLICATIONS) {
            throw new IllegalArgumentException("replications is " + replications + ", but must be at least 2");
        }
        List<Quantity> quantities = quantities(a, b);
        List<double[]> first = play(new PossibleEvents(a, sets), seed, quantities, replications, execution, onDone);
        List<double[]> second = play(
                new PossibleEvents(b, sets),
                seed,
                quantities,
                replications,
                execution,
                done -> onDone.accept(replications + done));
        return judged(quantities, sets, first, second);
    }

    /** Every quantity of every playing. */
    private static List<double[]> play(
            PossibleEvents events,
            long seed,
            List<Quantity> quantities,
            int replications,
            Execution execution,
            IntConsumer onDone) {
        Repeated repeated = new Repeated(events, new RandomStreams(seed), LuckSource::byFrameInSquads);
        return new Study(repeated)
                .play(
                        Part.first(replications),
                        execution,
                        double[].class,
                        number -> Watch.ofFilms(summary -> quantities.stream()
                                .mapToDouble(quantity -> quantity.value().applyAsDouble(summary.result()))
                                .toArray()),
                        onDone);
    }

    /** Something a playing gives, of a squad or of all. */
    private record Quantity(Compared compared, Optional<String> squad, ToDoubleFunction<EventResult> value) {
        Quantity(Compared compared, ToDoubleFunction<EventResult> value) {
            this(compared, Optional.empty(), value);
        }

        static Quantity of(String squad, Compared compared, ToDoubleFunction<SquadResult> value) {
            return new Quantity(
                    compared, Optional.of(squad), result -> value.applyAsDouble(EventComparison.squad(result, squad)));
        }
    }

    private static List<Quantity> quantities(Event a, Event b) {
        List<Quantity> all = new ArrayList<>();
        all.add(new Quantity(Compared.MEAN_SCORE, EventComparison::meanScore));
        List<String> common = a.squads().stream()
                .map(squad -> squad.id())
                .filter(id -> b.squads().stream().anyMatch(squad -> squad.id().equals(id)))
                .toList();
        if (common.size() > 1) {
            common.forEach(id -> all.add(Quantity.of(id, Compared.SQUAD_SCORE, SquadResult::meanScore)));
            all.add(new Quantity(Compared.SQUAD_GAP, EventComparison::squadGap));
        }
        all.add(new Quantity(Compared.SPREAD, EventComparison::spread));
        common.forEach(id -> all.add(Quantity.of(id, Compared.SQUAD_END, squad -> squad.endMs() / MS_PER_MINUTE)));
        all.add(new Quantity(Compared.OIL_LAID, result -> result.oil().appliedMl()));
        all.add(new Quantity(Compared.OIL_LEFT, result -> atTheEnd(result, LaneState::volumeMl)));
        all.add(new Quantity(Compared.HEAD_OIL, result -> atTheEnd(result, LaneState::headUnitsLow)));
        all.add(new Quantity(Compared.CARRYDOWN, result -> atTheEnd(result, LaneState::carrydownMl)));
        return all;
    }

    private static List<Difference> judged(
            List<Quantity> quantities, int sets, List<double[]> first, List<double[]> second) {
        List<Pairs> all = IntStream.range(0, quantities.size())
                .mapToObj(q -> new Pairs(column(first, q), column(second, q), sets))
                .toList();
        double[] p = Holm.adjust(all.stream()
                .mapToDouble(pairs -> pairs.difference().truth().twoSidedP(0))
                .toArray());
        return IntStream.range(0, all.size())
                .mapToObj(q -> all.get(q).judged(quantities.get(q), p[q]))
                .toList();
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    /** One quantity of both events, playing by playing. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Pairs(double[] a, double[] b, int sets) {
        NestedMean difference() {
            return NestedMean.ofPairs(b, a, sets);
        }

        Difference judged(Quantity quantity, double p) {
            NestedMean found = difference();
            return new Difference(
                    quantity.compared(),
                    quantity.squad(),
                    Arrays.stream(a).average().orElseThrow(),
                    Arrays.stream(b).average().orElseThrow(),
                    found.mean(),
                    found.truth().interval(LEVEL),
                    p,
                    found.signShare(differences()),
                    known(p));
        }

        private double[] differences() {
            return IntStream.range(0, a.length).mapToDouble(i -> b[i] - a[i]).toArray();
        }

        /** Whether it is real, from its corrected probability if there were none. */
        Difference.Known known(double p) {
            if (p <= ALPHA) {
                return Difference.Known.REAL;
            }
            if (Arrays.equals(a, b)) {
                return Difference.Known.NONE;
            }
            ConfidenceInterval remains = difference().withoutLuck().interval(LEVEL);
            return remains.low() <= 0 && remains.high() >= 0 ? Difference.Known.HANGS : Difference.Known.HIDDEN;
        }
    }

    private static SquadResult squad(EventResult result, String id) {
        Optional<SquadResult> found = result.squads().stream()
                .filter(squad -> squad.squad().equals(id))
                .findFirst();
        return found.orElseThrow();
    }

    private static double meanScore(EventResult result) {
        return result.squads().stream()
                .flatMap(squad -> squad.bowlers().stream())
                .mapToDouble(BowlerResult::meanScore)
                .average()
                .orElseThrow();
    }

    private static double squadGap(EventResult result) {
        var means = result.squads().stream().mapToDouble(SquadResult::meanScore).summaryStatistics();
        return means.getMax() - means.getMin();
    }

    private static double spread(EventResult result) {
        Tally means = new Tally("mean of a bowler");
        result.squads().forEach(squad -> squad.bowlers().forEach(bowler -> means.add(bowler.meanScore())));
        return means.count() < 2 ? 0 : means.standardDeviation();
    }

    /** Mean over the lanes as the last squad on each has left it. */
    private static double atTheEnd(EventResult result, ToDoubleFunction<LaneState> quantity) {
        Map<Integer, LaneState> last = new LinkedHashMap<>();
        result.lanes().forEach(state -> last.put(state.lane(), state));
        return last.values().stream().mapToDouble(quantity).average().orElseThrow();
    }
}
