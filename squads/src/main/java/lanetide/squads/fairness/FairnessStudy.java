package lanetide.squads.fairness;

import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import lanetide.des.Replications;
import lanetide.des.random.RandomStreams;
import lanetide.squads.model.Event;

/**
 * Plays an event in rounds. In a round every bowler keeps his luck while all change seats, so that what remains between two of
 * his scores is what the seats did. The rounds are independent of each other.
 */
public final class FairnessStudy {
    /** Playings of a round beside its seatings: the draw as it is, and the lanes that do not change. */
    private static final int BESIDE_SEATINGS = 2;

    private static final int MIN_SEATINGS = 3;
    private static final int MAX_SEATINGS = 6;

    /** Fewest rounds that give an interval. */
    private static final int MIN_ROUNDS = 2;

    private static final int MIN_BOWLERS = 2;

    private FairnessStudy() {}

    /**
     * Playings of one round: in seatings of a number that lets every bowler visit every squad equally often, up to six squads,
     * and two more.
     *
     * @param event the event
     * @return at least 5
     */
    public static int playingsOfRound(Event event) {
        return seatings(event.squads().size()) + BESIDE_SEATINGS;
    }

    /**
     * Fewest playings a study of an event can have.
     *
     * @param event the event
     * @return two rounds
     */
    public static int fewestPlayings(Event event) {
        return MIN_ROUNDS * playingsOfRound(event);
    }

    /**
     * Whether an event can be judged at all.
     *
     * @param event the event
     * @return true if it has two bowlers at least, so that they can change seats
     */
    public static boolean hasSeatsToChange(Event event) {
        return new Seats(event).count() >= MIN_BOWLERS;
    }

    /**
     * Studies an event; the result does not depend on the number of threads.
     *
     * @param event the event
     * @param plan how it is studied
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return what every class of seats and bowlers gains
     * @throws IllegalArgumentException if the event has a single bowler, the plan allows fewer than {@link #fewestPlayings}, or
     *     {@code threads < 1}
     */
    public static FairnessResult run(Event event, FairnessPlan plan, int threads, IntConsumer onDone) {
        Event studied = plan.lanesChange() ? event : UnchangingLanes.withoutPractice(event);
        Seats seats = new Seats(studied);
        EventScores scores = new EventScores(studied, seats);
        FairnessResult result = run(studied, seats, scores, plan, threads, onDone);
        if (!plan.lanesChange()) {
            return result;
        }
        GroupWear wear = new GroupWear(event, scores.asDrawn(new RandomStreams(plan.seed()).forReplication(0)));
        return result.because(Reasons.of(event, result.effects(), result.estimates(), wear));
    }

    /** The same with scores from anywhere. */
    static FairnessResult run(
            Event event, Seats seats, ScoreSource source, FairnessPlan plan, int threads, IntConsumer onDone) {
        int perRound = playingsOfRound(event);
        int rounds = plan.playings() / perRound;
        if (rounds < MIN_ROUNDS || seats.count() < MIN_BOWLERS) {
            throw new IllegalArgumentException(
                    "a fairness study needs at least " + MIN_ROUNDS * perRound + " playings and " + MIN_BOWLERS
                            + " bowlers, but has " + plan.playings() + " and " + seats.count());
        }
        RandomStreams streams = new RandomStreams(plan.seed());
        int[] squads = seats.classes(Seat::squad);
        List<Round> played = Replications.run(
                rounds,
                threads,
                r -> play(source, squads, perRound - BESIDE_SEATINGS, streams.forReplication(r)),
                done -> onDone.accept(done * perRound));
        return FairnessResult.of(new EffectEstimates(event, seats, played), plan, rounds * perRound);
    }

    static int seatings(int squads) {
        int perSquad = (MIN_SEATINGS + squads - 1) / squads;
        return Math.min(MAX_SEATINGS, squads * perSquad);
    }

    private static Round play(ScoreSource source, int[] squads, int seatings, RandomStreams streams) {
        int[][] bowlerAtSeat = new Seatings(squads, seatings, streams).bowlerAtSeat();
        double[][] scores = new double[seatings][];
        for (int k = 0; k < seatings; k++) {
            scores[k] = source.play(bowlerAtSeat[k], true, streams);
        }
        int[] drawn = IntStream.range(0, squads.length).toArray();
        return new Round(
                bowlerAtSeat, scores, source.play(drawn, true, streams), source.play(bowlerAtSeat[0], false, streams));
    }
}
