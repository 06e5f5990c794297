package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.StyleWindow;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Explicit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a label or a mirror must not change. */
class SymmetryTest {
    private static int reorderedAlike;
    private static int mirroredAlike;

    @AfterAll
    static void theReadmeSaysHowManyWereAlike() {
        ReadmeRow.says("groups listed in another order; random rotations", reorderedAlike + " of 8");
        ReadmeRow.says("every hand mirrored: scores, timetable, windows; random rotations", mirroredAlike + " of 4");
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void groupsListedInAnotherOrderPlayTheSameEvent(long seed) {
        Random random = new Random(seed);
        List<Group> groups = Events.groups(2, 1, 3);
        Rotation rotation = Events.random(3, 4, 3, random);
        List<Integer> order = new ArrayList<>(List.of(0, 1, 2));
        Collections.shuffle(order, random);

        EventResult listed = Events.play(Events.event(Events.centre(4), rotation, groups), seed);
        EventResult reordered = Events.play(
                Events.event(
                        Events.centre(4),
                        reordered(rotation, order),
                        order.stream().map(groups::get).toList()),
                seed);

        assertThat(scores(reordered)).as("seed %d, order %s", seed, order).isEqualTo(scores(listed));
        assertThat(reordered.lanes()).as("seed %d, order %s", seed, order).isEqualTo(listed.lanes());
        assertThat(reordered.timetable()).as("seed %d, order %s", seed, order).isEqualTo(listed.timetable());
        assertThat(reordered.shots()).as("seed %d, order %s", seed, order).isEqualTo(listed.shots());
        reorderedAlike++;
    }

    private static Rotation reordered(Rotation rotation, List<Integer> order) {
        List<List<Integer>> table = IntStream.range(0, rotation.games())
                .mapToObj(game -> order.stream()
                        .map(group -> rotation.pairOf(game, group))
                        .toList())
                .toList();
        return new Explicit(table).plan(order.size(), rotation.pairs(), rotation.games());
    }

    private static Map<String, List<Integer>> scores(EventResult result) {
        Map<String, List<Integer>> scores = new TreeMap<>();
        result.squads()
                .get(0)
                .bowlers()
                .forEach(bowler -> scores.put(bowler.bowler().id(), bowler.scores()));
        return scores;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void withEveryHandMirroredTheScoresAreTheSameAndTheWindowsMirrored(long seed) {
        List<Group> groups = Events.groups(4, 4);
        Rotation rotation = Events.random(2, 3, 2, new Random(seed));

        EventResult played = Events.play(Events.event(Events.centre(3), rotation, groups), seed, true);
        EventResult mirrored = Events.play(Events.event(Events.centre(3), rotation, mirrored(groups)), seed, true);

        assertThat(scores(mirrored)).as("seed %d", seed).isEqualTo(scores(played));
        assertThat(mirrored.timetable()).as("seed %d", seed).isEqualTo(played.timetable());
        for (int i = 0; i < played.lanes().size(); i++) {
            LaneState lane = played.lanes().get(i);
            LaneState image = mirrored.lanes().get(i);
            assertThat(image.volumeMl()).as("seed %d, %s", seed, lane).isCloseTo(lane.volumeMl(), within(1e-9));
            assertThat(windowsMirrored(image.windows())).as("seed %d", seed).isEqualTo(new HashSet<>(lane.windows()));
        }
        mirroredAlike++;
    }

    private static List<Group> mirrored(List<Group> groups) {
        return groups.stream()
                .map(group -> new Group(
                        group.id(),
                        group.bowlers().stream().map(SymmetryTest::mirrored).toList()))
                .toList();
    }

    private static Bowler mirrored(Bowler bowler) {
        return bowler.as(bowler.id(), other(bowler.hand()));
    }

    private static Set<StyleWindow> windowsMirrored(List<StyleWindow> windows) {
        Set<StyleWindow> mirrored = new HashSet<>();
        for (StyleWindow window : windows) {
            mirrored.add(new StyleWindow(window.style(), other(window.hand()), window.boards()));
        }
        return mirrored;
    }

    private static Hand other(Hand hand) {
        return hand == Hand.RIGHT ? Hand.LEFT : Hand.RIGHT;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void bowlersOfTwoHandsShareTheWearOfTheHeads(long seed) {
        double oneHand = leastHeadUnits(seed, Hand.RIGHT);
        double twoHands = leastHeadUnits(seed, Hand.LEFT);

        assertThat(twoHands).as("seed %d", seed).isGreaterThan(oneHand + 0.5);
    }

    /**
     * Film on the most worn board after four games of two right-handers and two bowlers of the given hand. All stand
     * deep enough for their balls to be on the flat of the pattern, whose boards this is read on.
     */
    private static double leastHeadUnits(long seed, Hand hand) {
        Bowler[] bowlers = new Bowler[4];
        for (int i = 0; i < bowlers.length; i++) {
            bowlers[i] = Events.bowler(
                    "b" + i, i < 2 ? Hand.RIGHT : hand, "power", Events.level("scratch"), "medium-reactive");
        }
        return Events.play(Events.onePair(4, bowlers), seed).lanes().stream()
                .mapToDouble(LaneState::headUnitsLow)
                .min()
                .orElseThrow();
    }
}
