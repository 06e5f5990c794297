package lanetide.squads.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.des.stats.Holm;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.fairness.FairnessPlan;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.FairnessStudy;
import lanetide.squads.model.Event;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Part;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Repeated;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;

/**
 * What the least sure advantage of an event hangs on, and what would make it surer: the event is played under every
 * shipped set, a round with changed seats for the answer and once more with other luck for the readings.
 */
public final class MeasurementStudy {
    /** Unknowns that are told. */
    private static final int MOST_TOLD = 6;
    /** Chance above which an unknown or a measurement is not shown to go with the answer. */
    private static final double SHOWN = 0.05;
    /** Share of the variance below which an unknown is not told (assumption). */
    private static final double WORTH_TELLING = 0.02;

    private MeasurementStudy() {}

    /**
     * Playings a study takes, for telling how far it is.
     *
     * @param event the event
     * @return playings in all
     */
    public static int playings(Event event) {
        return ValueSets.of(event).size() * (FairnessStudy.playingsOfRound(event) + 1);
    }

    /**
     * Studies the least sure advantage of a squad, or of a style where there is one squad.
     *
     * @param event the event
     * @param result a study of its fairness over sets of values
     * @param execution how, as the next studies of its run
     * @param onDone told the number of playings done so far
     * @return what it hangs on; empty if the event has neither two squads nor two styles
     */
    public static Optional<WhatToMeasure> run(
            Event event, FairnessResult result, Execution execution, IntConsumer onDone) {
        return result.leastSure().map(least -> run(event, result.plan(), least, execution, onDone));
    }

    private static WhatToMeasure run(
            Event event, FairnessPlan plan, FairnessResult.LeastSure least, Execution execution, IntConsumer onDone) {
        List<ValueSet> values = ValueSets.of(event);
        int sets = values.size();
        PossibleEvents events = new PossibleEvents(event, sets);
        int rounds = sets * FairnessStudy.playingsOfRound(event);
        double[] answers = FairnessStudy.run(events, plan.playing(rounds), execution, onDone)
                .byRound(least.kind(), least.id());
        Narrowing narrowing = new Narrowing(answers, least.luckVariance());
        List<Measurement> candidates = Readings.candidates(event);
        List<double[]> readings =
                readings(events, candidates, plan.seed(), execution, done -> onDone.accept(rounds + done));
        return new WhatToMeasure(
                least.kind(),
                least.id(),
                Math.sqrt(narrowing.notKnown()),
                hangsOn(narrowing, values),
                worth(narrowing, candidates, readings).stream()
                        .sorted(Comparator.comparingDouble(WhatToMeasure.Worth::narrows)
                                .reversed())
                        .toList());
    }

    /** Readings under each set, with luck that the answers have not met. */
    private static List<double[]> readings(
            PossibleEvents events, List<Measurement> candidates, long seed, Execution execution, IntConsumer onDone) {
        int sets = events.sets();
        return new Study(Repeated.of(events, seed))
                .play(
                        new Part(sets, 2 * sets),
                        execution,
                        double[].class,
                        number -> {
                            Readings paper = Readings.of(events.event(), candidates);
                            return Watch.by(paper.observers(), summary -> paper.taken(summary.result()));
                        },
                        onDone);
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    /** What is not shown to go with the answer, looking at all of them (Holm), narrows nothing. */
    private static List<WhatToMeasure.Worth> worth(
            Narrowing narrowing, List<Measurement> candidates, List<double[]> readings) {
        double[] chances = Holm.adjust(IntStream.range(0, candidates.size())
                .mapToDouble(m -> narrowing.chance(column(readings, m)))
                .toArray());
        return IntStream.range(0, candidates.size())
                .mapToObj(m -> new WhatToMeasure.Worth(
                        candidates.get(m),
                        chances[m] > SHOWN
                                ? 0
                                : narrowing.by(column(readings, m), Readings.errorVariance(candidates.get(m)))))
                .toList();
    }

    private static List<WhatToMeasure.HangsOn> hangsOn(Narrowing narrowing, List<ValueSet> values) {
        if (narrowing.notKnown() == 0) {
            return List.of();
        }
        List<Unknown> all = Stream.concat(OilModel.UNKNOWNS.all().stream(), PlayModel.UNKNOWNS.all().stream())
                .toList();
        double[] chances = Holm.adjust(all.stream()
                .mapToDouble(unknown -> narrowing.chance(shares(unknown, values)))
                .toArray());
        return IntStream.range(0, all.size())
                .filter(u -> chances[u] <= SHOWN)
                .mapToObj(u -> hangsOn(narrowing, all.get(u), values))
                .filter(one -> one.share() >= WORTH_TELLING)
                .sorted(Comparator.comparingDouble(WhatToMeasure.HangsOn::share).reversed())
                .limit(MOST_TOLD)
                .toList();
    }

    private static WhatToMeasure.HangsOn hangsOn(Narrowing narrowing, Unknown unknown, List<ValueSet> values) {
        double[] shares = shares(unknown, values);
        double share = Math.min(1, narrowing.explained(shares, 0) / narrowing.notKnown());
        return new WhatToMeasure.HangsOn(unknown.id(), share, narrowing.correlation(shares) > 0);
    }

    private static double[] shares(Unknown unknown, List<ValueSet> values) {
        return values.stream()
                .mapToDouble(set -> unknown.shareOf(set.of(unknown)))
                .toArray();
    }
}
