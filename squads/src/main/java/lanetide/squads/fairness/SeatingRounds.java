package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.qualifying.People;
import lanetide.squads.study.Playing;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.unknown.ValueSets;

/**
 * How playings follow each other in rounds. In a round every bowler keeps his luck while all change seats; then the
 * event is played as it is drawn, and last in the first seating on lanes that do not change. The rounds are independent
 * of each other.
 */
final class SeatingRounds {
    /** Playings of a round beside its seatings: the draw as it is, and the lanes that do not change. */
    private static final int BESIDE_SEATINGS = 2;

    private static final int MIN_SEATINGS = 3;
    private static final int MAX_SEATINGS = 6;

    /** Fewest rounds that give an interval. */
    private static final int MIN_ROUNDS = 2;

    private static final int MIN_BOWLERS = 2;

    private final PossibleEvents events;
    private final Seats seats;
    private final int[] squads;
    private final int[] personOf;
    private final int seatings;
    private final int rounds;
    private final RandomStreams streams;
    private final int sets;

    /**
     * As many whole rounds as a plan allows. They go through the sets of values of an event in turn.
     *
     * @throws IllegalArgumentException if there is a single bowler, or the plan allows fewer than two rounds
     */
    SeatingRounds(PossibleEvents events, FairnessPlan plan) {
        int squadCount = events.event().squads().size();
        this.events = events;
        this.seats = new Seats(events.event());
        this.squads = seats.classes(Seat::squad);
        People people = new People(events.event());
        this.personOf = IntStream.range(0, seats.count()).map(people::personOf).toArray();
        this.seatings = seatings(squadCount);
        this.rounds = plan.playings() / perRound(squadCount);
        this.sets = events.sets();
        this.streams = new RandomStreams(plan.seed());
        if (rounds < MIN_ROUNDS || !canChange(seats)) {
            throw new IllegalArgumentException("a fairness study needs at least " + minPlayings(squadCount)
                    + " playings and " + MIN_BOWLERS + " bowlers, but has " + plan.playings() + " and "
                    + seats.count());
        }
    }

    /** So many seatings that every bowler visits every squad equally often, up to six squads. */
    static int seatings(int squadCount) {
        int perSquad = (MIN_SEATINGS + squadCount - 1) / squadCount;
        return Math.min(MAX_SEATINGS, squadCount * perSquad);
    }

    static int perRound(int squadCount) {
        return seatings(squadCount) + BESIDE_SEATINGS;
    }

    static int minPlayings(int squadCount) {
        return MIN_ROUNDS * perRound(squadCount);
    }

    static boolean canChange(Seats seats) {
        return seats.count() >= MIN_BOWLERS;
    }

    /** The seats, with those whom the scenario has in them. */
    Seats seats() {
        return seats;
    }

    /** The seats with those who come in a round. */
    Seats seats(int round) {
        return round == 0 ? seats : new Seats(events.inRound(round, streams.forReplication(round)));
    }

    /** Sets of values that the rounds go through; 1 if all values are as usual. */
    int sets() {
        return sets;
    }

    /** Playings of all rounds. */
    int playings() {
        return playings(rounds);
    }

    /** Playings of the first rounds, or of all if there are fewer. */
    int playings(int first) {
        return Math.min(first, rounds) * (seatings + BESIDE_SEATINGS);
    }

    Playing playing(int number) {
        int perRound = seatings + BESIDE_SEATINGS;
        int round = number / perRound;
        return new Playing(number, round, ValueSets.ofRound(round, sets), number % perRound);
    }

    /** The luck of a playing, which is that of its round. */
    RandomStreams luck(Playing playing) {
        return streams.forReplication(playing.luck());
    }

    /** The number of the first playing in which everybody sits where he is drawn. */
    int firstAsDrawn() {
        return seatings;
    }

    /** Whether a playing is on lanes that stay as they are laid. */
    boolean isStill(Playing playing) {
        return playing.seating() > seatings;
    }

    /** Who sits in each seat. */
    int[] bowlerAtSeat(Playing playing) {
        if (playing.seating() == seatings) {
            return seats.asDrawn();
        }
        return bowlerAtSeat(playing.luck())[isStill(playing) ? 0 : playing.seating()];
    }

    private int[][] bowlerAtSeat(int round) {
        return new Seatings(squads, personOf, seatings, streams.forReplication(round)).bowlerAtSeat();
    }

    /** The first rounds, or all, from the mean scores of every playing by bowler (pins a game). */
    List<Round> rounds(List<double[]> scores) {
        List<Round> found = new ArrayList<>();
        for (int round = 0; playings(round) < scores.size(); round++) {
            int from = playings(round);
            double[][] seated = scores.subList(from, from + seatings).toArray(double[][]::new);
            found.add(new Round(
                    seats(round),
                    bowlerAtSeat(round),
                    seated,
                    scores.get(from + seatings),
                    scores.get(from + seatings + 1)));
        }
        return found;
    }
}
