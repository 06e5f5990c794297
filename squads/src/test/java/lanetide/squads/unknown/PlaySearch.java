package lanetide.squads.unknown;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.Unknown;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/** Gives sets of the oil model values of play, and weighs them by what bowlers of each level then score. */
final class PlaySearch {
    /** Sets that are played. */
    static final int SETS = 1200;

    private static final List<Unknown> PLAY = PlayModel.UNKNOWNS.all();

    /** All unknowns, in the order of a point's shares. */
    static final List<Unknown> ALL = Stream.of(ValueSearch.OIL, List.of(OilModel.UNKNOWNS.of(ValueSearch.LAW)), PLAY)
            .flatMap(List::stream)
            .toList();

    private final List<Bank.Point> points;

    /**
     * Plays the sets.
     *
     * @param file where they stand as far as they have been played
     * @param oil sets of the oil model, whose weights add up to 1
     */
    PlaySearch(Path file, List<ValueSearch.Weighted> oil) {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(PLAY.size());
        sobol.skipTo(1);
        List<double[]> wanted = drawn(oil, SETS).stream()
                .map(point -> joined(point.shares(), sobol.nextVector()))
                .toList();
        this.points = new Bank(file, ALL, PlayFacts::of).extend(0, wanted);
    }

    private static double[] joined(double[] oil, double[] play) {
        double[] all = Arrays.copyOf(oil, oil.length + play.length);
        System.arraycopy(play, 0, all, oil.length, play.length);
        return all;
    }

    /** By equal steps through the sum of the weights, so that a point comes as often as its weight says, within one. */
    static List<Bank.Point> drawn(List<ValueSearch.Weighted> weighted, int count) {
        List<Bank.Point> drawn = new ArrayList<>();
        double sum = 0;
        for (ValueSearch.Weighted one : weighted) {
            sum += one.weight();
            while (drawn.size() < count && (drawn.size() + 0.5) / count < sum) {
                drawn.add(one.point());
            }
        }
        return drawn;
    }

    /** The sets with the weights that the scores give them; they add up to 1. */
    List<ValueSearch.Weighted> weighted() {
        double[] weights = points.stream()
                .mapToDouble(point -> Math.exp(-Fact.chiSquare(PlayFacts.FACTS, point.said()) / 2))
                .toArray();
        double sum = Arrays.stream(weights).sum();
        return IntStream.range(0, weights.length)
                .mapToObj(i -> new ValueSearch.Weighted(points.get(i), weights[i] / sum))
                .toList();
    }
}
