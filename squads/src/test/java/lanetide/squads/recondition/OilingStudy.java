package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Levels;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PossibleEvents;

/**
 * When to oil again on a house pattern, asked forty times with other luck: whether the interval for luck holds the mean
 * of the others, and whether recommendations differ by no more than costs do.
 */
final class OilingStudy {
    static final int SEEDS = 40;
    /** What `reoil` plays where nobody says how often. */
    private static final int PLAYINGS = 20;

    private static final int SETS = 10;
    private static final int GAMES = 24;
    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");
    private static final List<String> LEVELS = List.of("league", "league", "casual", "scratch");

    /** The event under its sets, whose lines are found once. */
    private final PossibleEvents events = new PossibleEvents(event(), SETS);

    private static Event event() {
        List<Group> groups = List.of(group("1"), group("2"));
        return Fixtures.event(
                "test",
                Fixtures.centre(2, Fixtures.machines(1, 45_000, 45_000)),
                OilPattern.of("test", 40 * LaneGeometry.FOOT_M, 24, 8),
                List.of(Fixtures.squad("A", 0, Conditioning.STRIP_AND_OIL, 600_000, groups)),
                List.of(new Stay().plan(2, 2, 3)),
                PaceOfPlay.USUAL);
    }

    private static Group group(String id) {
        return new Group(
                id,
                IntStream.range(0, STYLES.size())
                        .mapToObj(i -> bowler(id + "-" + i, i))
                        .toList());
    }

    private static Bowler bowler(String id, int i) {
        return Fixtures.bowler(
                id,
                id.startsWith("2") && i == 2 ? Hand.LEFT : Hand.RIGHT,
                STYLES.get(i),
                Levels.shipped().get(LEVELS.get(i)),
                "medium-reactive");
    }

    /** What is recommended with the luck of a seed. */
    Interval interval(int seed) {
        ReoilPlan plan = new ReoilPlan(seed, PLAYINGS, GAMES, 2, ReoilPlan.DEFAULT_LIMIT_BOARDS, Costs.USUAL);
        return ReoilStudy.run(events, plan, Execution.on(Runtime.getRuntime().availableProcessors()), done -> {})
                .interval(Basis.COST);
    }

    /**
     * Runs the study on all processors and prints its table.
     *
     * @param args nothing
     */
    public static void main(String[] args) {
        OilingStudy study = new OilingStudy();
        List<Interval> all = new ArrayList<>();
        for (int seed = 1; seed <= SEEDS; seed++) {
            Interval one = study.interval(seed);
            all.add(one);
            System.out.println(String.format(
                    Locale.ROOT,
                    "%d: %.0f, luck %.1f to %.1f, flat %s",
                    seed,
                    one.games(),
                    one.luckLow(),
                    one.luckHigh(),
                    one.flat()));
        }
        double sum = all.stream().mapToDouble(Interval::games).sum();
        long held = all.stream()
                .filter(one -> {
                    double others = (sum - one.games()) / (SEEDS - 1);
                    return one.luckLow() <= others && others <= one.luckHigh();
                })
                .count();
        double low = all.stream().mapToDouble(Interval::games).min().orElseThrow();
        double high = all.stream().mapToDouble(Interval::games).max().orElseThrow();
        long inside = all.stream()
                .filter(one -> one.flat().orElseThrow().from() <= low
                        && high <= one.flat().orElseThrow().to())
                .count();
        System.out.println(String.format(
                Locale.ROOT,
                "held %d of %d; recommendations from %.0f to %.0f, all of them inside the flat range of %d",
                held,
                SEEDS,
                low,
                high,
                inside));
    }
}
