package lanetide.squads.rotation;

import java.util.ArrayList;
import java.util.List;

/**
 * Everybody against everybody else once, by the circle method: one stays, the others go round. Of an odd number one
 * sits out in every round.
 */
public final class RoundRobin {
    private RoundRobin() {}

    /**
     * Two who meet.
     *
     * @param first one of them, from 0
     * @param second the other, above {@code first}
     */
    public record Meeting(int first, int second) {}

    /**
     * Who meets whom in which round. In every round meetings stand in the order of the lane pairs they are bowled on:
     * two of a round change pairs as long as that makes it more even how often each has been on each pair.
     *
     * @param size how many take part, at least 2
     * @return rounds of meetings, one fewer than there are, or as many of an odd number
     * @throws IllegalArgumentException if {@code size < 2}
     */
    public static List<List<Meeting>> rounds(int size) {
        if (size < 2) {
            throw new IllegalArgumentException("a round robin needs two at least, not " + size);
        }
        int others = size - 1 + size % 2;
        List<List<Meeting>> rounds = new ArrayList<>();
        int[][] visits = new int[size][size / 2];
        for (int round = 0; round < others; round++) {
            List<Meeting> meetings = round(size, others, round);
            for (int pair = 0; pair < meetings.size(); pair++) {
                count(visits, meetings.get(pair), pair, 1);
            }
            rounds.add(meetings);
        }
        // Every exchange makes the sum of squared visits smaller, so that this ends.
        boolean changed = true;
        while (changed) {
            changed = false;
            for (List<Meeting> round : rounds) {
                changed |= isMadeEven(round, visits);
            }
        }
        return rounds.stream().map(List::copyOf).toList();
    }

    /** Exchanges pairs within a round where that helps; tells whether any did. */
    private static boolean isMadeEven(List<Meeting> round, int[][] visits) {
        boolean changed = false;
        for (int a = 0; a < round.size(); a++) {
            for (int b = a + 1; b < round.size(); b++) {
                if (gain(round.get(a), a, b, visits) + gain(round.get(b), b, a, visits) < 0) {
                    exchange(round, a, b, visits);
                    changed = true;
                }
            }
        }
        return changed;
    }

    private static void exchange(List<Meeting> round, int a, int b, int[][] visits) {
        Meeting first = round.get(a);
        Meeting second = round.get(b);
        count(visits, first, a, -1);
        count(visits, second, b, -1);
        count(visits, first, b, 1);
        count(visits, second, a, 1);
        round.set(a, second);
        round.set(b, first);
    }

    private static void count(int[][] visits, Meeting meeting, int pair, int more) {
        visits[meeting.first()][pair] += more;
        visits[meeting.second()][pair] += more;
    }

    /** By how much the sum of squared visits grows if a meeting changes its pair: n to n - 1 there, m to m + 1 here. */
    private static int gain(Meeting meeting, int from, int to, int[][] visits) {
        int[] first = visits[meeting.first()];
        int[] second = visits[meeting.second()];
        return 2 * (first[to] - first[from] + 1) + 2 * (second[to] - second[from] + 1);
    }

    /** The last of an even number stays; who would meet a last one who is not there sits out. */
    private static List<Meeting> round(int size, int others, int round) {
        List<Meeting> meetings = new ArrayList<>();
        for (int first = 0; first < others; first++) {
            int second = Math.floorMod(2 * round - first, others);
            if (second > first) {
                meetings.add(new Meeting(first, second));
            } else if (second == first && others < size) {
                meetings.add(new Meeting(first, others));
            }
        }
        return meetings;
    }
}
