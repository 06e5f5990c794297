package lanetide.cli.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Conditions that a coach could ask about, every one with every other.
 *
 * @param feet lengths (ft), rising
 * @param ratios ratios, rising
 * @param volumesMl volumes (mL), rising
 * @param surfaces surfaces, from the least friction to the most
 * @param styles styles, from the fewest revs to the most
 * @param covers covers; of those that flare alike the weaker first
 * @param games games that have worn the lanes
 */
record CoachGrid(
        List<Integer> feet,
        List<Double> ratios,
        List<Integer> volumesMl,
        List<String> surfaces,
        List<String> styles,
        List<String> covers,
        int games) {
    /** Covers that flare, the weaker first. */
    static final List<String> REACTIVE = List.of("weak-reactive", "medium-reactive", "strong-reactive");

    /** Covers that hardly flare, the weaker first. */
    static final List<String> SMOOTH = List.of("plastic", "urethane");

    static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");

    static final List<String> SURFACES = List.of("hard-synthetic", "textured-synthetic", "worn-synthetic", "wood");

    /** All that is asked on fresh lanes. */
    static CoachGrid full() {
        return new CoachGrid(
                List.of(33, 36, 39, 42, 45, 48),
                List.of(1.5, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0),
                List.of(20, 25, 30),
                SURFACES,
                STYLES,
                allCovers(),
                0);
    }

    /** Enough of it for every count, in seconds. */
    static CoachGrid sample() {
        return new CoachGrid(
                List.of(36, 42),
                List.of(1.5, 4.0, 8.0),
                List.of(20, 30),
                List.of("hard-synthetic", "wood"),
                STYLES,
                allCovers(),
                0);
    }

    /** What is asked on lanes that so many games have worn. */
    static CoachGrid worn(int games) {
        return new CoachGrid(
                List.of(36, 40, 44), List.of(2.5, 6.0, 9.0), List.of(20, 25, 30), SURFACES, STYLES, REACTIVE, games);
    }

    private static List<String> allCovers() {
        List<String> covers = new ArrayList<>(SMOOTH);
        covers.addAll(REACTIVE);
        return List.copyOf(covers);
    }

    boolean isFresh() {
        return games == 0;
    }

    /** The answers, in a fixed order whatever the threads. */
    List<GridAnswer> answers() {
        List<List<GridPoint>> lanes = lanes();
        return IntStream.range(0, lanes.size())
                .parallel()
                .mapToObj(lane -> new GridLane(lanes.get(lane), lane, games).answers())
                .flatMap(List::stream)
                .toList();
    }

    /** The questions, by lane. */
    private List<List<GridPoint>> lanes() {
        List<List<GridPoint>> lanes = new ArrayList<>();
        for (int length : feet) {
            for (double ratio : ratios) {
                for (int volumeMl : volumesMl) {
                    for (String surface : surfaces) {
                        lanes.add(on(length, ratio, volumeMl, surface));
                    }
                }
            }
        }
        return lanes;
    }

    private List<GridPoint> on(int length, double ratio, int volumeMl, String surface) {
        List<GridPoint> points = new ArrayList<>();
        for (String style : styles) {
            for (String cover : covers) {
                points.add(new GridPoint(length, ratio, volumeMl, surface, style, cover));
            }
        }
        return points;
    }
}
