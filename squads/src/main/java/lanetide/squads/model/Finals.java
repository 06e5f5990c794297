package lanetide.squads.model;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.Require;
import lanetide.squads.rotation.RoundRobin;
import lanetide.squads.score.ScoreCard;

/**
 * What those who make the cut bowl: matches of two on a pair of lanes, round after round, on the lanes as they are.
 * Seeds are the places in qualifying, from 1.
 *
 * @param startMs planned start of practice (ms from midnight before the first day), at least 0
 * @param conditioning what is done to the lanes before
 * @param practiceMs length of practice on the pair of the first match (ms), at least 0
 * @param games games of a match, at least 1
 * @param bonusPins pins for a won match of a round robin, half of them for a tie, 0 to 300
 * @param rounds matches by round, in the order of the lane pairs they are bowled on; in a round robin all by seeds
 * @param isRoundRobin whether pins and bonus over all rounds decide, and not the last match
 * @param onPairs lane pairs that matches are bowled on, the first match of a round on the first; none for those of the
 *     centre that are not spare, from the left
 */
public record Finals(
        long startMs,
        Conditioning conditioning,
        long practiceMs,
        int games,
        int bonusPins,
        List<List<Match>> rounds,
        boolean isRoundRobin,
        List<LanePair> onPairs) {
    /** Where one of the two of a match comes from. */
    public enum From {
        /** His place in qualifying. */
        SEED,
        /** He won an earlier match. */
        WINNER,
        /** He lost an earlier match. */
        LOSER
    }

    /**
     * One of the two of a match.
     *
     * @param from where he comes from
     * @param number the seed, or the number of the match, from 1
     */
    public record Side(From from, int number) {}

    /**
     * A match.
     *
     * @param first who bowls first
     * @param second the other
     */
    public record Match(Side first, Side second) {}

    /**
     * Copies the lists and checks the plan.
     *
     * @throws IllegalArgumentException if a value lies outside its range, there is no match, a side names a match that
     *     is not in an earlier round or is used twice, a seed has two matches in one round, or a seed has none though a
     *     worse one has
     */
    public Finals {
        Require.inRange((double) startMs, "start of finals (ms)", 0, Double.MAX_VALUE);
        Require.inRange((double) practiceMs, "practice of finals (ms)", 0, Double.MAX_VALUE);
        Require.inRange(games, "games of a match", 1, Integer.MAX_VALUE);
        Require.inRange(bonusPins, "bonus for a match", 0, ScoreCard.PERFECT);
        rounds = rounds.stream().map(List::copyOf).toList();
        onPairs = List.copyOf(onPairs);
        if (rounds.isEmpty() || rounds.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("finals need a match in every round");
        }
        checkPlan(rounds);
        checkSeeds(rounds);
    }

    private static void checkSeeds(List<List<Match>> rounds) {
        List<Side> named = sides(rounds);
        int most = most(named);
        for (int number = 1; number <= most; number++) {
            if (!named.contains(new Side(From.SEED, number))) {
                throw new IllegalArgumentException(
                        "seed " + number + " has no match, but seed " + most + " has; name the best seeds");
            }
        }
    }

    private static void checkPlan(List<List<Match>> rounds) {
        List<Side> taken = new ArrayList<>();
        int before = 0;
        for (List<Match> round : rounds) {
            List<Side> now = round.stream()
                    .flatMap(match -> List.of(match.first(), match.second()).stream())
                    .toList();
            for (Side side : now) {
                boolean again = side.from() == From.SEED
                        ? now.stream().filter(side::equals).count() > 1
                        : taken.contains(side)
                                || now.stream().filter(side::equals).count() > 1;
                if (again || (side.from() != From.SEED && side.number() > before) || side.number() < 1) {
                    throw new IllegalArgumentException((side.from() == From.SEED
                                    ? "seed "
                                    : side.from() == From.WINNER ? "the winner of match " : "the loser of match ")
                            + side.number() + " cannot bowl in round " + (rounds.indexOf(round) + 1)
                            + "; name winners and losers of earlier rounds, and everybody once");
                }
            }
            taken.addAll(now);
            before += round.size();
        }
    }

    /**
     * Everybody against everybody once, by the circle method.
     *
     * @param size how many are in the finals, at least 2
     * @return matches by round
     */
    public static List<List<Match>> roundRobin(int size) {
        return RoundRobin.rounds(size).stream()
                .map(round -> round.stream()
                        .map(meeting -> new Match(seed(meeting.first()), seed(meeting.second())))
                        .toList())
                .toList();
    }

    private static Side seed(int place) {
        return new Side(From.SEED, place + 1);
    }

    /**
     * How many of those who go on bowl.
     *
     * @return the largest seed
     */
    public int seeds() {
        return most(sides(rounds));
    }

    private static List<Side> sides(List<List<Match>> rounds) {
        return rounds.stream()
                .flatMap(List::stream)
                .flatMap(match -> List.of(match.first(), match.second()).stream())
                .toList();
    }

    private static int most(List<Side> sides) {
        return sides.stream()
                .filter(side -> side.from() == From.SEED)
                .mapToInt(Side::number)
                .max()
                .orElse(0);
    }

    /**
     * The same finals on other pairs.
     *
     * @param others lane pairs, the first match of a round on the first
     * @return the finals
     */
    public Finals on(List<LanePair> others) {
        return new Finals(startMs, conditioning, practiceMs, games, bonusPins, rounds, isRoundRobin, others);
    }

    /**
     * The pairs that matches are bowled on.
     *
     * @param centre the lanes
     * @return the pairs, the first match of a round on the first
     */
    public List<LanePair> pairs(Centre centre) {
        return onPairs.isEmpty() ? centre.rotationPairs() : onPairs;
    }

    /**
     * How many pairs of lanes are in use at once.
     *
     * @return the most matches of a round
     */
    public int matchesAtOnce() {
        return rounds.stream().mapToInt(List::size).max().orElseThrow();
    }
}
