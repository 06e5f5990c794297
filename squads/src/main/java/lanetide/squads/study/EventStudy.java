package lanetide.squads.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import lanetide.des.Replications;
import lanetide.des.StoppedRun;
import lanetide.des.StoppingRule;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.Tally;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.play.LaneObserver;
import lanetide.squads.play.Observers;
import lanetide.squads.play.Setup;
import lanetide.squads.play.TournamentSimulation;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.study.PlayingSummary.SquadSummary;

/** Plays an event many times with independent luck. */
public final class EventStudy {
    private static final double LEVEL = 0.95;

    private EventStudy() {}

    /**
     * Plays an event a fixed number of times; the result does not depend on the number of threads.
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
        return run(event, seed, replications, threads, onDone, LaneObserver.NONE);
    }

    /**
     * Plays an event a fixed number of times while the lanes of the first playing are looked at.
     *
     * @param event the event
     * @param seed master seed of all chance
     * @param replications how often it is played, at least 1
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @param observer is shown the lanes of the first playing, by one thread
     * @return statistics, with the first playing as the example
     * @throws IllegalArgumentException if {@code replications < 1} or {@code threads < 1}
     */
    public static StudyResult run(
            Event event, long seed, int replications, int threads, IntConsumer onDone, LaneObserver observer) {
        return run(event, seed, Playings.fixed(replications), threads, onDone, Observers.of(observer));
    }

    /**
     * Plays an event as often as it takes while the first playing is watched; the result does not depend on the number of threads.
     *
     * @param event the event
     * @param seed master seed of all chance
     * @param playings how often it is played
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @param observers watch the first playing, on one thread
     * @return statistics, with the first playing as the example
     * @throws IllegalArgumentException if {@code threads < 1}
     */
    public static StudyResult run(
            Event event, long seed, Playings playings, int threads, IntConsumer onDone, Observers observers) {
        if (threads < 1) {
            throw new IllegalArgumentException("threads (" + threads + ") must be at least 1");
        }
        Physics physics = Physics.under(event.laws());
        StartingLines lines = new StartingLines(event, physics);
        RandomStreams streams = new RandomStreams(seed);
        AtomicReference<EventResult> first = new AtomicReference<>();
        IntFunction<PlayingSummary> model = r -> {
            boolean example = r == 0;
            Setup setup = Setup.of(event, physics, lines, LuckSource.byBall(streams.forReplication(r)));
            EventResult playing =
                    new TournamentSimulation(example ? setup.withWindows(true).watchedBy(observers) : setup).play();
            if (example) {
                first.set(playing);
            }
            return PlayingSummary.of(playing);
        };
        if (playings.halfWidthPins().isEmpty()) {
            List<PlayingSummary> all = Replications.run(playings.most(), threads, model, onDone);
            return result(first.get(), all, Optional.empty());
        }
        double wantedPins = playings.halfWidthPins().getAsDouble();
        StoppingRule rule = new StoppingRule(wantedPins, LEVEL, Playings.FLOOR, playings.most());
        StoppedRun<PlayingSummary> run =
                Replications.runUntil(rule, threads, model, PlayingSummary::meanScores, onDone);
        Precision precision = new Precision(wantedPins, run.halfWidth(), run.isNarrowEnough(), run.projected());
        return result(first.get(), run.results(), Optional.of(precision));
    }

    private static StudyResult result(EventResult first, List<PlayingSummary> playings, Optional<Precision> precision) {
        List<SquadStatistics> squads = new ArrayList<>();
        for (int s = 0; s < first.squads().size(); s++) {
            squads.add(statistics(first.squads().get(s).squad(), playings, s));
        }
        List<TimetableStatistics> timetable = first.timetable().stream()
                .map(entry -> statistics(entry, playings))
                .toList();
        return new StudyResult(first, squads, timetable, playings.size(), precision);
    }

    private static SquadStatistics statistics(String id, List<PlayingSummary> playings, int squad) {
        List<SquadSummary> all =
                playings.stream().map(playing -> playing.squads().get(squad)).toList();
        Tally mean = new Tally();
        Tally end = new Tally();
        PaceKept pace = PaceKept.NOTHING;
        for (SquadSummary one : all) {
            mean.add(one.meanScore());
            end.add((double) one.endMs());
            pace = pace.plus(one.pace());
        }
        Optional<ConfidenceInterval> interval =
                all.size() < 2 ? Optional.empty() : Optional.of(mean.meanInterval(LEVEL));
        return new SquadStatistics(id, mean.mean(), interval, byGame(all), (long) end.min(), (long) end.max(), pace);
    }

    private static List<Double> byGame(List<SquadSummary> all) {
        List<Double> byGame = new ArrayList<>();
        for (int game = 0; game < all.get(0).byGame().size(); game++) {
            Tally scores = new Tally();
            for (SquadSummary one : all) {
                scores.add(one.byGame().get(game));
            }
            byGame.add(scores.mean());
        }
        return byGame;
    }

    private static TimetableStatistics statistics(TimetableEntry entry, List<PlayingSummary> playings) {
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
