package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lanetide.des.stats.NestedMean;
import lanetide.des.stats.Tally;

/**
 * The curve behind the interval, from a set of playings: what has become of lanes and scores by the games on the oil.
 */
final class AgeCurve {
    private final int sets;
    private final double[] spreadPins;
    private final double[] levelPins;

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
        spreadPins = new double[games];
        levelPins = new double[games];
        for (int age = 0; age < games; age++) {
            spread(playings, age, styles);
        }
    }

    /**
     * Root mean square over the bowlers, by their styles, and over the sets of values, of how far the expected score is
     * from that on fresh oil. The noise of estimating is taken off the square, so that a lane that does not change has
     * no spread.
     */
    private void spread(List<BlockPlaying> playings, int age, int styles) {
        double square = 0;
        double level = 0;
        double weights = 0;
        for (int style = 0; style < styles; style++) {
            int of = style;
            double[] changes = playings.stream()
                    .flatMapToDouble(playing -> playing.changePins(age, of).stream())
                    .toArray();
            // A style plays at an age in all playings or in none.
            if (changes.length >= 2) {
                double weight = BlockPlaying.games(playings, age, style);
                NestedMean change = NestedMean.of(changes, Math.min(sets, changes.length));
                square += weight * change.meanSquare();
                level += weight * change.mean();
                weights += weight;
            }
        }
        if (weights > 0) {
            spreadPins[age] = Math.sqrt(Math.max(0, square / weights));
            levelPins[age] = level / weights;
        } else if (age > 0) {
            spreadPins[age] = spreadPins[age - 1];
            levelPins[age] = levelPins[age - 1];
        }
    }

    /**
     * In the first, second, ... game on the oil (pins a game). Ages that nobody has played keep the last value before
     * them.
     */
    double[] spreadPins() {
        return spreadPins.clone();
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
