package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lanetide.des.stats.NestedMean;
import lanetide.des.stats.Tally;

/**
 * The curve behind the interval, from a set of playings: what has become of lanes and scores by the games on the oil.
 *
 * <p>Every style weighs at every age as much as it plays in all, since another squad plays at another age, and what its
 * field is made of is not what the oil's age does.
 */
final class AgeCurve {
    private final int sets;
    private final double[] spreadPins;
    private final double[] levelPins;
    /** Mean square change over all ages by set of values, as a share of the mean over the sets. */
    private final double[] squareShareOfSet;

    /**
     * Averages playings.
     *
     * @param playings at least two
     * @param games games on the oil
     * @param styles number of styles
     * @param sets sets of values that the playings went through in turn; 1 if all values were as usual
     */
    AgeCurve(List<BlockPlaying> playings, int games, int styles, int sets) {
        this.sets = Math.min(sets, playings.size());
        double[] weights = IntStream.range(0, styles)
                .mapToDouble(style -> IntStream.range(0, games)
                        .mapToDouble(age -> BlockPlaying.games(playings, age, style))
                        .sum())
                .toArray();
        double[] squares = new double[games];
        double[] known = new double[games];
        double[] ofSet = new double[this.sets];
        levelPins = new double[games];
        for (int age = 0; age < games; age++) {
            double weight = 0;
            for (int style = 0; style < styles; style++) {
                double[] changes = changes(playings, age, style);
                // A style plays at an age in all playings or in none.
                if (changes.length >= 2) {
                    NestedMean change = NestedMean.of(changes, this.sets);
                    weight += weights[style];
                    squares[age] += weights[style] * change.meanSquare();
                    levelPins[age] += weights[style] * change.mean();
                    double[] squaresOfSets = change.meanSquares(changes);
                    for (int s = 0; s < this.sets; s++) {
                        ofSet[s] += weights[style] * squaresOfSets[s];
                    }
                    known[age] += BlockPlaying.games(playings, age, style);
                }
            }
            squares[age] = weight > 0 ? squares[age] / weight : 0;
            levelPins[age] = weight > 0 ? levelPins[age] / weight : age > 0 ? levelPins[age - 1] : 0;
        }
        spreadPins = Arrays.stream(Isotonic.rising(squares, known))
                .map(square -> Math.sqrt(Math.max(0, square)))
                .toArray();
        double mean = Arrays.stream(ofSet).average().orElseThrow();
        squareShareOfSet = Arrays.stream(ofSet)
                .map(square -> mean > 0 ? Math.max(0, square) / mean : 0)
                .toArray();
    }

    private static double[] changes(List<BlockPlaying> playings, int age, int style) {
        return playings.stream()
                .flatMapToDouble(playing -> playing.changePins(age, style).stream())
                .toArray();
    }

    /**
     * In the first, second, ... game on the oil (pins a game): root mean square over the bowlers, by their styles, and
     * over the sets of values, of how far the expected score is from that on fresh oil. The noise of estimating is
     * taken off the square, so that a lane that does not change has no spread; oil that gets older does not get better,
     * so the curve is the rising one nearest to the squares. Ages that nobody has played keep the last value before
     * them.
     */
    double[] spreadPins() {
        return spreadPins.clone();
    }

    /**
     * The same under one set of values: the curve of all, larger or smaller by how much scores change under this set
     * over all ages, since one age under one set is mostly luck.
     */
    double[] spreadPins(int set) {
        double scale = Math.sqrt(squareShareOfSet[set]);
        return Arrays.stream(spreadPins).map(pins -> scale * pins).toArray();
    }

    /** Sets of values that the playings went through in turn. */
    int sets() {
        return sets;
    }

    /** Mean change of all scores (pins a game), by game. */
    double[] levelPins() {
        return levelPins.clone();
    }

    /**
     * How far windows have moved on each lane of each playing, by games on the oil from 1: mean over the typical
     * players of the absolute move of the best exit board. A player who finds no line is as far off as the limit
     * allows.
     */
    static double[][] paths(List<BlockPlaying> playings, int games, double limitBoards) {
        List<double[]> paths = new ArrayList<>();
        for (BlockPlaying playing : playings) {
            for (LaneLooks.Look[][] lane : playing.looks()) {
                paths.add(path(lane, games, limitBoards));
            }
        }
        return paths.toArray(double[][]::new);
    }

    private static double[] path(LaneLooks.Look[][] lane, int games, double limitBoards) {
        double[] path = new double[games];
        double last = 0;
        for (int age = 1; age <= games; age++) {
            if (lane[age][0] != null) {
                Tally moves = new Tally("move");
                for (int p = 0; p < lane[age].length; p++) {
                    OptionalDouble now = lane[age][p].bestBoard();
                    OptionalDouble fresh = lane[0][p].bestBoard();
                    moves.add(
                            now.isPresent() && fresh.isPresent()
                                    ? Math.abs(now.getAsDouble() - fresh.getAsDouble())
                                    : limitBoards);
                }
                last = moves.mean();
            }
            path[age - 1] = last;
        }
        return path;
    }
}
