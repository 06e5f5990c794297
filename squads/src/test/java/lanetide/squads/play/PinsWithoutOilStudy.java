package lanetide.squads.play;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.study.Part;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Repeated;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.Observers;

/**
 * How often bowlers of a level strike, leave one pin and clear what they left, on patterns of some lengths and ratios:
 * four styles of both hands, six games on one oiling, over sets of values.
 */
final class PinsWithoutOilStudy {
    static final List<String> LEVELS = List.of("elite", "scratch", "league", "casual");
    static final List<Double> RATIOS = List.of(1.5, 3.0, 6.0, 10.0);
    static final List<Integer> FEET = List.of(36, 40, 44);
    static final int PLAYINGS = 80;
    private static final int SETS = 40;
    private static final long FIRST_SEED = 71_200;
    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");
    private static final List<String> COVERS =
            List.of("weak-reactive", "weak-reactive", "medium-reactive", "strong-reactive");
    private static final int GAMES = 6;

    private PinsWithoutOilStudy() {}

    /**
     * Shares that were counted.
     *
     * @param strikes of balls at full racks
     * @param ones balls that left one pin, of those that were no strikes
     * @param cleared balls at what was left that left nothing
     */
    record Shares(double strikes, double ones, double cleared) {}

    static Shares of(String level, int feet, double ratio, int from, int to) {
        Study study = new Study(Repeated.of(
                new PossibleEvents(event(level, feet, ratio), SETS), FIRST_SEED + 1000L * feet + (long) (10 * ratio)));
        List<int[]> counts = study.play(
                new Part(from, to),
                Runtime.getRuntime().availableProcessors(),
                number -> {
                    int[] count = new int[5];
                    return Watch.by(
                            new Observers(
                                    LaneObserver.NONE,
                                    shot -> count(count, shot.frame(), shot.standing(), shot.left()),
                                    List.of()),
                            summary -> count);
                },
                done -> {});
        double[] sums = IntStream.range(0, 5)
                .mapToDouble(i -> counts.stream().mapToInt(count -> count[i]).sum())
                .toArray();
        return new Shares(sums[1] / sums[0], sums[2] / (sums[0] - sums[1]), sums[4] / sums[3]);
    }

    private static void count(int[] count, int frame, int standing, int left) {
        if (frame == 0) {
            return;
        }
        if (standing == Rack.FULL) {
            count[0]++;
            count[1] += left == 0 ? 1 : 0;
            count[2] += Integer.bitCount(left) == 1 ? 1 : 0;
        } else {
            count[3]++;
            count[4] += left == 0 ? 1 : 0;
        }
    }

    private static Event event(String level, int feet, double ratio) {
        OilPattern pattern = OilPattern.of("test", feet * LaneGeometry.FOOT_M, 25, ratio);
        List<Group> groups = List.of(group("1", level), group("2", level));
        return Fixtures.event(
                "test",
                Fixtures.centre(2, Fixtures.machines(1, 45_000, 45_000)),
                pattern,
                List.of(Fixtures.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, 600_000, groups)),
                List.of(Events.stay(2, 2, GAMES)),
                PaceOfPlay.USUAL);
    }

    private static Group group(String id, String level) {
        return new Group(
                id,
                IntStream.range(0, STYLES.size())
                        .mapToObj(i -> bowler(id, level, i))
                        .toList());
    }

    private static Bowler bowler(String group, String level, int i) {
        return Events.bowler(
                group + "-" + i,
                group.equals("2") && i == 2 ? Hand.LEFT : Hand.RIGHT,
                STYLES.get(i),
                Events.level(level),
                COVERS.get(i));
    }

    /**
     * Runs the study on all processors and prints the data file.
     *
     * @param args nothing
     */
    public static void main(String[] args) {
        for (String level : LEVELS) {
            for (int feet : FEET) {
                Shares[] shares = RATIOS.stream()
                        .map(ratio -> of(level, feet, ratio, 0, PLAYINGS))
                        .toArray(Shares[]::new);
                print(level, feet, "strikes", Arrays.stream(shares).mapToDouble(Shares::strikes));
                print(level, feet, "ones", Arrays.stream(shares).mapToDouble(Shares::ones));
                print(level, feet, "cleared", Arrays.stream(shares).mapToDouble(Shares::cleared));
            }
        }
    }

    private static void print(String level, int feet, String what, DoubleStream shares) {
        String listed = shares.mapToObj(share -> String.format(Locale.ROOT, "%.3f", share))
                .collect(Collectors.joining(", "));
        System.out.println(level + "-" + feet + "." + what + " = " + listed);
    }
}
