package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import lanetide.des.Replications;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.Tally;
import lanetide.squads.model.Event;

/** Plays an event many times with independent luck. */
public final class EventStudy {
    private static final double LEVEL = 0.95;

    private EventStudy() {}

    /**
     * Plays an event; the result does not depend on the number of threads.
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
     * Plays an event while the lanes of the first playing are looked at.
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
        if (replications < 1 || threads < 1) {
            throw new IllegalArgumentException(
                    "replications (" + replications + ") and threads (" + threads + ") must be at least 1");
        }
        Physics physics = Physics.under(event.laws());
        StartingLines lines = new StartingLines(event, physics);
        RandomStreams streams = new RandomStreams(seed);
        List<EventResult> playings = Replications.run(
                replications,
                threads,
                r -> playing(event, physics, lines, streams.forReplication(r), r == 0, observer),
                onDone);
        List<SquadStatistics> squads = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            squads.add(statistics(playings, s));
        }
        return new StudyResult(playings.get(0), squads, replications);
    }

    private static EventResult playing(
            Event event, Physics physics, StartingLines lines, RandomStreams streams, boolean first, LaneObserver eye) {
        return new TournamentSimulation(event, physics, lines, streams, first, first ? eye : LaneObserver.NONE).play();
    }

    private static SquadStatistics statistics(List<EventResult> playings, int squad) {
        Tally mean = new Tally();
        Tally end = new Tally();
        for (EventResult playing : playings) {
            mean.add(playing.squads().get(squad).meanScore());
            end.add((double) playing.squads().get(squad).endMs());
        }
        Optional<ConfidenceInterval> interval =
                playings.size() < 2 ? Optional.empty() : Optional.of(mean.meanInterval(LEVEL));
        SquadResult first = playings.get(0).squads().get(squad);
        List<Double> byGame = new ArrayList<>();
        for (int game = 0; game < first.bowlers().get(0).scores().size(); game++) {
            Tally scores = new Tally();
            for (EventResult playing : playings) {
                scores.add(playing.squads().get(squad).meanScore(game));
            }
            byGame.add(scores.mean());
        }
        return new SquadStatistics(first.squad(), mean.mean(), interval, byGame, (long) end.min(), (long) end.max());
    }
}
