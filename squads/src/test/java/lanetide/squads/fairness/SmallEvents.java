package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Levels;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.Stay;

/** Small events whose fairness can be told in advance. */
final class SmallEvents {
    private static final long HOUR_MS = 3_600_000;
    private static final long PRACTICE_MS = 10 * 60_000;
    private static final String[] STYLES = {"straight", "stroker", "tweener", "power"};
    private static final String[] LEVELS = {"elite", "scratch", "league"};
    private static final String[] COVERS = {"urethane", "medium-reactive", "strong-reactive"};

    private SmallEvents() {}

    static Bowler scratchTweener(String id, Hand hand) {
        return bowler(id, hand, "tweener", "scratch", "medium-reactive");
    }

    static Bowler bowler(String id, Hand hand, String style, String level, String cover) {
        return Fixtures.bowler(id, hand, style, Levels.shipped().get(level), cover);
    }

    /** All the same, all from the right. */
    static List<Group> alike(int groups, int bowlers) {
        return groups(groups, bowlers, id -> scratchTweener(id, Hand.RIGHT));
    }

    /** Of many kinds and both hands. */
    static List<Group> mixed(int groups, int bowlers) {
        int[] next = {0};
        return groups(groups, bowlers, id -> {
            int i = next[0]++;
            Hand hand = i % 5 == 4 ? Hand.LEFT : Hand.RIGHT;
            return bowler(id, hand, STYLES[i % 4], LEVELS[i / 2 % 3], COVERS[i / 3 % 3]);
        });
    }

    static List<Group> groups(int groups, int bowlers, java.util.function.Function<String, Bowler> bowler) {
        return IntStream.rangeClosed(1, groups)
                .mapToObj(g -> new Group(
                        String.valueOf(g),
                        IntStream.rangeClosed(1, bowlers)
                                .mapToObj(b -> bowler.apply(g + "-" + b))
                                .toList()))
                .toList();
    }

    /** Squads A, B, ... of the same make, two hours apart. */
    static Event event(int pairs, Rotation rotation, List<Group> groups, Conditioning... squads) {
        List<Squad> list = new ArrayList<>();
        List<Rotation> rotations = new ArrayList<>();
        for (int s = 0; s < squads.length; s++) {
            String id = String.valueOf((char) ('A' + s));
            list.add(Fixtures.squad(id, (8 + 3 * s) * HOUR_MS, squads[s], PRACTICE_MS, groups));
            rotations.add(rotation);
        }
        return Fixtures.event(
                "test",
                Fixtures.centre(pairs, Fixtures.machines(2, 45_000, 45_000)),
                OilPattern.of("test", 41 * LaneGeometry.FOOT_M, 26, 3),
                list,
                rotations,
                PaceOfPlay.USUAL);
    }

    /** Two squads of three groups that move to the right. */
    static Event twoSquads(List<Group> groups, int games, Conditioning second) {
        Rotation right = new Ring(1, 1).plan(groups.size(), groups.size(), games);
        return event(groups.size(), right, groups, Conditioning.STRIP_AND_OIL, second);
    }

    static Event staying(List<Group> groups, int games) {
        Rotation stay = new Stay().plan(groups.size(), groups.size(), games);
        return event(groups.size(), stay, groups, Conditioning.STRIP_AND_OIL);
    }

    /** The same event with its groups changed one by one. */
    static Event withGroups(Event event, UnaryOperator<Group> change) {
        List<Squad> squads = event.squads().stream()
                .map(squad ->
                        squad.withGroups(squad.groups().stream().map(change).toList()))
                .toList();
        return event.withSquads(squads);
    }
}
