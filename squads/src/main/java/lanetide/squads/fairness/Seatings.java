package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.ListSampler;

/**
 * Who sits where in the seatings of one round. Bowlers stand in a random order and move on by an equal share of all
 * seats from seating to seating; the seats stand squad by squad, within a squad in an order drawn anew for each
 * seating. So every bowler visits every squad as evenly as whole numbers allow, and any seat of a squad with equal
 * chance. Where a person would sit twice in one squad, one of his entries changes seats with somebody of another squad,
 * drawn by lot; those two may visit squads less evenly in that round.
 */
final class Seatings {
    private final int[] squadOfSeat;
    private final int[] personOf;
    /** Number of entries by person. */
    private final int[] entries;

    private final int[][] bowlerAtSeat;

    /** Draws a round in which nobody has two entries. */
    Seatings(int[] squadOfSeat, int seatings, RandomStreams streams) {
        this(squadOfSeat, upTo(squadOfSeat.length).stream().mapToInt(i -> i).toArray(), seatings, streams);
    }

    /**
     * Draws a round.
     *
     * @param squadOfSeat squad of every seat, not falling
     * @param personOf whose entry each bowler is; as drawn nobody sits twice in one squad
     * @param seatings seatings in the round
     * @param streams the round's own streams
     */
    Seatings(int[] squadOfSeat, int[] personOf, int seatings, RandomStreams streams) {
        this.squadOfSeat = squadOfSeat;
        this.personOf = personOf;
        this.entries = new int[personOf.length];
        for (int person : personOf) {
            entries[person]++;
        }
        UniformRandomProvider stream = streams.stream("fairness/seats");
        int count = squadOfSeat.length;
        List<Integer> order = upTo(count);
        ListSampler.shuffle(stream, order);
        bowlerAtSeat = new int[seatings][count];
        for (int k = 0; k < seatings; k++) {
            List<Integer> seats = shuffledWithinSquads(squadOfSeat, stream);
            int shift = (int) ((long) k * count / seatings);
            for (int place = 0; place < count; place++) {
                bowlerAtSeat[k][seats.get(place)] = order.get((place + shift) % count);
            }
            part(bowlerAtSeat[k], streams.stream("fairness/apart/" + k));
        }
    }

    /** Parts entries of one person that sit in one squad. */
    private void part(int[] seated, UniformRandomProvider stream) {
        for (int seat = 0; seat < seated.length; seat++) {
            if (isThereTwice(seated, seat)) {
                List<Integer> others = upTo(seated.length);
                ListSampler.shuffle(stream, others);
                for (int i = 0; i < others.size() && isThereTwice(seated, seat); i++) {
                    changeIfApart(seated, seat, others.get(i));
                }
            }
        }
    }

    /** Two change seats, unless the other one would then sit in one squad with another entry of his. */
    private void changeIfApart(int[] seated, int seat, int other) {
        swap(seated, seat, other);
        if (isThereTwice(seated, seat) || isThereTwice(seated, other)) {
            swap(seated, seat, other);
        }
    }

    private static void swap(int[] seated, int seat, int other) {
        int there = seated[seat];
        seated[seat] = seated[other];
        seated[other] = there;
    }

    /** Whether another entry of the person in a seat sits in the same squad. */
    private boolean isThereTwice(int[] seated, int seat) {
        int person = personOf[seated[seat]];
        if (entries[person] == 1) {
            return false;
        }
        for (int other = 0; other < seated.length; other++) {
            if (other != seat && personOf[seated[other]] == person && squadOfSeat[other] == squadOfSeat[seat]) {
                return true;
            }
        }
        return false;
    }

    /** Who sits in each seat, seating by seating. */
    int[][] bowlerAtSeat() {
        return bowlerAtSeat;
    }

    private static List<Integer> shuffledWithinSquads(int[] squadOfSeat, UniformRandomProvider stream) {
        List<Integer> seats = upTo(squadOfSeat.length);
        int from = 0;
        for (int to = 1; to <= seats.size(); to++) {
            if (to == seats.size() || squadOfSeat[to] != squadOfSeat[from]) {
                ListSampler.shuffle(stream, seats.subList(from, to));
                from = to;
            }
        }
        return seats;
    }

    private static List<Integer> upTo(int count) {
        List<Integer> numbers = new ArrayList<>(Collections.nCopies(count, 0));
        for (int i = 0; i < count; i++) {
            numbers.set(i, i);
        }
        return numbers;
    }
}
