package lanetide.squads.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import lanetide.des.StoppedRun;
import lanetide.des.StoppingRule;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.Tally;
import lanetide.squads.model.Event;
import lanetide.squads.play.LaneRecords;
import lanetide.squads.play.Observers;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.TimetableEntry;

/** What many playings of an event with independent luck say together, with the first as the example. */
public final class EventStudy {
    private static final double LEVEL = 0.95;
    private static final int EXAMPLE = 0;

    private EventStudy() {}

    /**
     * Plays an event a fixed number of times, and nobody watches.
     *
     * @param event the event
     * @param seed master seed of all chance
     * @param replications how often it is played, at least 1
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return statistics, with the first playing as the example
     * @throws IllegalArgumentException if {@code replications < 1} or {@code threads < 1}
     */
    public static StudyResult run(Event event, long seed, int replications, int threads, IntConsumer onDone) {
        return run(event, seed, Playings.fixed(replications), threads, onDone, number -> Observers.NONE);
    }

    /**
     * Plays an event as often as it takes; the result does not depend on the number of threads.
     *
     * @param event the event
     * @param seed master seed of all chance
     * @param playings how often it is played
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @param observers who watch the playing of a number, from 0, on the thread that plays it
     * @return statistics, with the first playing as the example
     * @throws IllegalArgumentException if {@code threads < 1}
     */
    public static StudyResult run(
            Event event,
            long seed,
            Playings playings,
            int threads,
            IntConsumer onDone,
            IntFunction<Observers> observers) {
        Study study = new Study(Repeated.of(event, seed));
        IntFunction<Watch<Kept>> watches = number -> new Watch<>(
                observers.apply(number), number == EXAMPLE ? LaneRecords.WINDOWS : LaneRecords.NONE, Kept::of);
        if (playings.halfWidthPins().isEmpty()) {
            return result(study.play(Part.first(playings.most()), threads, watches, onDone), Optional.empty());
        }
        double wantedPins = playings.halfWidthPins().getAsDouble();
        StoppingRule rule = new StoppingRule(wantedPins, LEVEL, Playings.MIN_UNTIL, playings.most());
        StoppedRun<Kept> run = study.playUntil(rule, threads, watches, Kept::meanScores, onDone);
        Precision precision = new Precision(wantedPins, run.halfWidth(), run.isNarrowEnough(), run.projected());
        return result(run.results(), Optional.of(precision));
    }

    /**
     * What is kept of one playing; the lanes and the bowlers of all would need too much memory.
     *
     * @param squads squad by squad
     * @param timetable what happened when
     * @param whole the whole playing, of the example alone
     */
    private record Kept(List<SquadKept> squads, List<TimetableEntry> timetable, Optional<EventResult> whole) {
        static Kept of(PlayingSummary summary) {
            EventResult result = summary.result();
            return new Kept(
                    result.squads().stream().map(SquadKept::of).toList(),
                    result.timetable(),
                    summary.playing().number() == EXAMPLE ? Optional.of(result) : Optional.empty());
        }

        /** The mean scores of the squads (pins a game). */
        double[] meanScores() {
            return squads.stream().mapToDouble(SquadKept::meanScore).toArray();
        }
    }

    /**
     * What is kept of one squad.
     *
     * @param meanScore mean over bowlers and games (pins)
     * @param byGame mean over bowlers, by game (pins)
     * @param endMs when its last ball was scored (ms)
     * @param pace how its time was spent
     */
    private record SquadKept(double meanScore, List<Double> byGame, long endMs, PaceKept pace) {
        static SquadKept of(SquadResult squad) {
            return new SquadKept(
                    squad.meanScore(),
                    IntStream.range(0, squad.games()).mapToObj(squad::meanScore).toList(),
                    squad.endMs(),
                    squad.pace());
        }
    }

    private static StudyResult result(List<Kept> playings, Optional<Precision> precision) {
        EventResult first = playings.get(EXAMPLE).whole().orElseThrow();
        List<SquadStatistics> squads = new ArrayList<>();
        for (int s = 0; s < first.squads().size(); s++) {
            squads.add(statistics(first.squads().get(s).squad(), playings, s));
        }
        List<TimetableStatistics> timetable = first.timetable().stream()
                .map(entry -> statistics(entry, playings))
                .toList();
        return new StudyResult(first, squads, timetable, playings.size(), precision);
    }

    private static SquadStatistics statistics(String id, List<Kept> playings, int squad) {
        List<SquadKept> all =
                playings.stream().map(playing -> playing.squads().get(squad)).toList();
        Tally mean = new Tally();
        Tally end = new Tally();
        PaceKept pace = PaceKept.NOTHING;
        for (SquadKept one : all) {
            mean.add(one.meanScore());
            end.add((double) one.endMs());
            pace = pace.plus(one.pace());
        }
        Optional<ConfidenceInterval> interval =
                all.size() < 2 ? Optional.empty() : Optional.of(mean.meanInterval(LEVEL));
        return new SquadStatistics(id, mean.mean(), interval, byGame(all), (long) end.min(), (long) end.max(), pace);
    }

    private static List<Double> byGame(List<SquadKept> all) {
        List<Double> byGame = new ArrayList<>();
        for (int game = 0; game < all.get(0).byGame().size(); game++) {
            Tally scores = new Tally();
            for (SquadKept one : all) {
                scores.add(one.byGame().get(game));
            }
            byGame.add(scores.mean());
        }
        return byGame;
    }

    private static TimetableStatistics statistics(TimetableEntry entry, List<Kept> playings) {
        List<TimetableEntry> same = playings.stream()
                .flatMap(playing -> playing.timetable().stream())
                .filter(other -> other.squad().equals(entry.squad())
                        && other.what() == entry.what()
                        && other.game() == entry.game())
                .toList();
        return new TimetableStatistics(
                entry.squad(),
                entry.what(),
                entry.game(),
                TimeSpread.of(same.stream().mapToDouble(TimetableEntry::startMs).toArray()),
                TimeSpread.of(same.stream().mapToDouble(TimetableEntry::endMs).toArray()));
    }
}
