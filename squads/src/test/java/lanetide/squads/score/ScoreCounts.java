package lanetide.squads.score;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * How many different games give each score, exactly.
 *
 * <p>Two games differ if any ball of one knocks down another number of pins. There are 66 ways to bowl each of the
 * first nine frames and 241 ways to bowl the tenth. The counts are carried from frame to frame by score and by what is
 * owed to the next two balls, so the work grows with the score range and not with the number of games.
 *
 * <p>Source: C. N. Cooper and R. E. Kennedy (1990), who put the question; the counts are published as A060853 in the
 * On-Line Encyclopedia of Integer Sequences.
 */
final class ScoreCounts {

    private final List<BigInteger> gamesByScore;

    private ScoreCounts(List<BigInteger> gamesByScore) {
        this.gamesByScore = List.copyOf(gamesByScore);
    }

    /**
     * Counts all games.
     *
     * @return the counts for the scores 0 to 300
     */
    public static ScoreCounts ofAllGames() {
        Map<Owed, List<BigInteger>> games = noGames();
        games.get(Owed.NOTHING).set(0, BigInteger.ONE);
        for (int frame = 1; frame < TenpinScore.FRAMES; frame++) {
            games = bowlFrame(games);
        }
        return new ScoreCounts(bowlTenthFrame(games));
    }

    /**
     * The number of games with one score.
     *
     * @param score 0 to 300
     * @return the exact count, at least 1
     * @throws IllegalArgumentException if {@code score < 0} or {@code score > 300}
     */
    public BigInteger gamesScoring(int score) {
        if (score < 0 || score > TenpinScore.PERFECT) {
            throw new IllegalArgumentException("The score (" + score + ") must be 0 to " + TenpinScore.PERFECT
                    + ". Ask for the score of one finished game.");
        }
        return gamesByScore.get(score);
    }

    /**
     * The number of games there are.
     *
     * @return 66<sup>9</sup> &times; 241
     */
    public BigInteger games() {
        return gamesByScore.stream().reduce(BigInteger.ZERO, BigInteger::add);
    }

    /**
     * The scores of all games added up; divided by {@link #games()} it is the mean score over all games.
     *
     * @return the exact sum in pins
     */
    public BigInteger sumOfScores() {
        return IntStream.rangeClosed(0, TenpinScore.PERFECT)
                .mapToObj(score -> gamesByScore.get(score).multiply(BigInteger.valueOf(score)))
                .reduce(BigInteger.ZERO, BigInteger::add);
    }

    /**
     * The score that most games have.
     *
     * @return the mode, 0 to 300
     */
    public int mostCommonScore() {
        return gamesByScore.indexOf(Collections.max(gamesByScore));
    }

    private static Map<Owed, List<BigInteger>> bowlFrame(Map<Owed, List<BigInteger>> before) {
        Map<Owed, List<BigInteger>> after = noGames();
        before.forEach((owed, games) -> {
            addShifted(after.get(owed.afterStrike()), games, owed.first * TenpinScore.PINS);
            for (int first = 0; first < TenpinScore.PINS; first++) {
                for (int second = 0; first + second <= TenpinScore.PINS; second++) {
                    Owed next = first + second == TenpinScore.PINS ? Owed.SPARE : Owed.NOTHING;
                    addShifted(after.get(next), games, owed.first * first + owed.second * second);
                }
            }
        });
        return after;
    }

    private static List<BigInteger> bowlTenthFrame(Map<Owed, List<BigInteger>> before) {
        List<BigInteger> after = noScores();
        before.forEach((owed, games) -> {
            for (int[] balls : tenthFrames()) {
                addShifted(after, games, owed.first * balls[0] + owed.second * balls[1] + balls[2]);
            }
        });
        return after;
    }

    /** The 241 tenth frames; a third ball that is not bowled is written as zero. */
    private static List<int[]> tenthFrames() {
        List<int[]> frames = new ArrayList<>();
        for (int first = 0; first <= TenpinScore.PINS; first++) {
            int secondRack = rackAfter(TenpinScore.PINS, first);
            for (int second = 0; second <= secondRack; second++) {
                boolean thirdIsDue = first + second >= TenpinScore.PINS;
                int thirdRack = thirdIsDue ? rackAfter(secondRack, second) : 0;
                for (int third = 0; third <= thirdRack; third++) {
                    frames.add(new int[] {first, second, third});
                }
            }
        }
        return frames;
    }

    private static int rackAfter(int standing, int pins) {
        return pins == standing ? TenpinScore.PINS : standing - pins;
    }

    /** Scores that no game can reach hold no games, so nothing is ever shifted past the perfect score. */
    private static void addShifted(List<BigInteger> sums, List<BigInteger> games, int pins) {
        for (int score = 0; score + pins < sums.size(); score++) {
            sums.set(score + pins, sums.get(score + pins).add(games.get(score)));
        }
    }

    private static Map<Owed, List<BigInteger>> noGames() {
        Map<Owed, List<BigInteger>> games = new EnumMap<>(Owed.class);
        for (Owed owed : Owed.values()) {
            games.put(owed, noScores());
        }
        return games;
    }

    private static List<BigInteger> noScores() {
        return new ArrayList<>(Collections.nCopies(TenpinScore.PERFECT + 1, BigInteger.ZERO));
    }

    /** How many times the next two balls count, their own frame included. */
    private enum Owed {
        NOTHING(1, 1),
        SPARE(2, 1),
        STRIKE(2, 2),
        DOUBLE(3, 2);

        private final int first;
        private final int second;

        Owed(int first, int second) {
            this.first = first;
            this.second = second;
        }

        private Owed afterStrike() {
            return this == STRIKE || this == DOUBLE ? DOUBLE : STRIKE;
        }
    }
}
