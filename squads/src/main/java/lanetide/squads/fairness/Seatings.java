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
 * chance.
 */
final class Seatings {
    private final int[][] bowlerAtSeat;

    /**
     * Draws a round.
     *
     * @param squadOfSeat squad of every seat, not falling
     * @param seatings seatings in the round
     * @param streams the round's own streams
     */
    Seatings(int[] squadOfSeat, int seatings, RandomStreams streams) {
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
        }
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
