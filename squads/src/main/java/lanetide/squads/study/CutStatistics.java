package lanetide.squads.study;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.qualifying.People;
import lanetide.squads.qualifying.Qualifying;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.FinalsResult;
import lanetide.squads.result.FinalsResult.Finalist;

/**
 * What came of the cut and the finals over the playings of an event as it is drawn.
 *
 * @param scorePins mean total of the last one who goes on (pins)
 * @param scoreCi95 interval of the mean, with luck and what is not known; empty for one playing
 * @param seeds the finalists by their places at the cut; none without finals
 * @param end when the finals end; empty without any
 */
public record CutStatistics(
        double scorePins, Optional<ConfidenceInterval> scoreCi95, List<OfSeed> seeds, Optional<TimeSpread> end) {
    /** Copies the list. */
    public CutStatistics {
        seeds = List.copyOf(seeds);
    }

    /**
     * What a place at the cut comes to in the finals.
     *
     * @param seed the place, from 1
     * @param firstShare share of the playings in which he is first at the end
     * @param firstCi95 interval of that share, within 0 and 1; empty for one playing
     * @param meanGame mean of his games there, with handicap if that counts (pins)
     */
    public record OfSeed(int seed, double firstShare, Optional<ConfidenceInterval> firstCi95, double meanGame) {}

    /**
     * What is kept of one playing.
     *
     * @param scorePins total of the last one who goes on (pins)
     * @param finals what came of the finals
     */
    record Kept(int scorePins, Optional<FinalsResult> finals) {
        /** Of an event that has a cut; empty if it has none. */
        static Optional<Kept> of(Event event, EventResult result) {
            return event.cut().map(cut -> of(cut, new People(event), result));
        }

        private static Kept of(Cut cut, People people, EventResult result) {
            Qualifying all =
                    Qualifying.of(cut, people.asDrawn(result.squads(), cut).people());
            return new Kept(all.qualified().scorePins(), result.finals());
        }
    }

    /** Over some playings that went through sets of values in turn. */
    static CutStatistics of(List<Kept> playings, int sets) {
        List<FinalsResult> finals =
                playings.stream().flatMap(playing -> playing.finals().stream()).toList();
        double[] scores = playings.stream().mapToDouble(Kept::scorePins).toArray();
        int seeds = finals.isEmpty() ? 0 : finals.get(0).finalists().size();
        return new CutStatistics(
                OverPlayings.mean(scores, sets),
                OverPlayings.interval(scores, sets),
                IntStream.range(0, seeds)
                        .mapToObj(seed -> ofSeed(finals, seed, sets))
                        .toList(),
                finals.isEmpty()
                        ? Optional.empty()
                        : Optional.of(TimeSpread.of(
                                finals.stream().mapToDouble(FinalsResult::endMs).toArray())));
    }

    private static OfSeed ofSeed(List<FinalsResult> finals, int seed, int sets) {
        double[] first = each(finals, seed, one -> one.place() == 1 ? 1 : 0);
        double[] games = each(
                finals,
                seed,
                one -> one.games().stream().mapToInt(game -> game).average().orElseThrow());
        return new OfSeed(
                seed + 1,
                OverPlayings.mean(first, sets),
                OverPlayings.interval(first, sets).map(found -> found.within(0, 1)),
                OverPlayings.mean(games, sets));
    }

    private static double[] each(List<FinalsResult> finals, int seed, ToDoubleFunction<Finalist> of) {
        return finals.stream()
                .mapToDouble(one -> of.applyAsDouble(one.finalists().get(seed)))
                .toArray();
    }
}
