package lanetide.squads.fairness;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.Unknown;
import lanetide.squads.model.Event;
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
        return ValueSets.count() * (FairnessStudy.playingsOfRound(event) + 1);
    }

    /**
     * Studies the least sure advantage of a squad, or of a style where there is one squad.
     *
     * @param event the event
     * @param result a study of its fairness over sets of values
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return what it hangs on; empty if the event has neither two squads nor two styles
     */
    public static Optional<WhatToMeasure> run(Event event, FairnessResult result, int threads, IntConsumer onDone) {
        return leastSure(result.estimates()).map(least -> run(event, result, least, threads, onDone));
    }

    /** An advantage, and the variance of its round by luck. */
    private record Least(EffectKind kind, int index, double luck) {}

    private static Optional<Least> leastSure(EffectEstimates found) {
        return Stream.of(EffectKind.SQUAD, EffectKind.STYLE)
                .filter(found.estimates()::containsKey)
                .findFirst()
                .map(kind -> {
                    Estimate estimate = found.estimates().get(kind);
                    int index = IntStream.range(0, estimate.classes())
                            .boxed()
                            .max(Comparator.comparingDouble(
                                    c -> estimate.nested(c).between()))
                            .orElseThrow();
                    return new Least(kind, index, estimate.nested(index).within());
                });
    }

    private static WhatToMeasure run(Event event, FairnessResult result, Least least, int threads, IntConsumer onDone) {
        int sets = ValueSets.count();
        PossibleEvents events = new PossibleEvents(event, sets);
        int rounds = sets * FairnessStudy.playingsOfRound(event);
        EffectEstimates found = FairnessStudy.play(events, result.plan().playing(rounds), threads, onDone)
                .result()
                .estimates();
        double[] answers = found.estimates().get(least.kind()).ofClass(least.index());
        Narrowing narrowing = new Narrowing(answers, least.luck());
        List<Measurement> candidates = Readings.candidates(event);
        List<double[]> readings =
                readings(events, candidates, result.plan().seed(), threads, done -> onDone.accept(rounds + done));
        return new WhatToMeasure(
                least.kind(),
                found.classes(least.kind()).ids().get(least.index()),
                Math.sqrt(narrowing.notKnown()),
                hangsOn(narrowing),
                IntStream.range(0, candidates.size())
                        .mapToObj(m -> worth(narrowing, candidates.get(m), column(readings, m)))
                        .sorted(Comparator.comparingDouble(WhatToMeasure.Worth::narrows)
                                .reversed())
                        .toList());
    }

    /** Readings under each set, with luck that the answers have not met. */
    private static List<double[]> readings(
            PossibleEvents events, List<Measurement> candidates, long seed, int threads, IntConsumer onDone) {
        int sets = events.sets();
        return new Study(Repeated.of(events, seed))
                .play(
                        new Part(sets, 2 * sets),
                        threads,
                        number -> {
                            Readings paper = Readings.of(events.event(), candidates);
                            return Watch.by(paper.observers(), summary -> paper.taken(summary.result()));
                        },
                        onDone);
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    private static WhatToMeasure.Worth worth(Narrowing narrowing, Measurement what, double[] readings) {
        return new WhatToMeasure.Worth(what, narrowing.by(readings, Readings.errorVariance(what)));
    }

    private static List<WhatToMeasure.HangsOn> hangsOn(Narrowing narrowing) {
        if (narrowing.notKnown() == 0) {
            return List.of();
        }
        return Stream.concat(OilModel.UNKNOWNS.all().stream(), PlayModel.UNKNOWNS.all().stream())
                .map(unknown -> hangsOn(narrowing, unknown))
                .filter(one -> one.share() >= WORTH_TELLING)
                .sorted(Comparator.comparingDouble(WhatToMeasure.HangsOn::share).reversed())
                .limit(MOST_TOLD)
                .toList();
    }

    private static WhatToMeasure.HangsOn hangsOn(Narrowing narrowing, Unknown unknown) {
        double[] shares = IntStream.rangeClosed(1, ValueSets.count())
                .mapToDouble(number -> unknown.shareOf(ValueSets.shipped(number).of(unknown)))
                .toArray();
        double share = Math.min(1, narrowing.explained(shares, 0) / narrowing.notKnown());
        return new WhatToMeasure.HangsOn(unknown.id(), share, narrowing.rises(shares));
    }
}
