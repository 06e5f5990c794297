package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import lanetide.des.Simulator;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Adaptation;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LaneCourtesy;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Laws;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Reckoning;
import lanetide.squads.model.Squad;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.SquadResult;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.watch.LaneRecords;

/** Small events for tests. Everything a test does not care about is the usual. */
public final class Events {
    public static final Catalogue CATALOGUE = Catalogue.shipped();
    public static final Physics PHYSICS = Physics.under(Laws.USUAL);
    public static final long MINUTE_MS = 60_000;
    public static final long START_MS = 9 * 60 * MINUTE_MS;
    public static final long PRACTICE_MS = 5 * MINUTE_MS;
    public static final long STRIP_MS = 40_000;
    public static final long OIL_MS = 50_000;
    /** The usual pace without chance and without courtesy, so that times can be told beforehand. */
    public static final PaceOfPlay STEADY =
            Fixtures.withCourtesy(Fixtures.withSpread(PaceOfPlay.USUAL, 0), LaneCourtesy.NONE);

    public static final OilPattern PATTERN = OilPattern.of("test", 40 * LaneGeometry.FOOT_M, 25, 3);

    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");
    private static final List<String> COVERS =
            List.of("urethane", "weak-reactive", "medium-reactive", "strong-reactive");
    private static final List<String> LEVELS = List.of("elite", "scratch", "league", "casual");

    private Events() {}

    public static Centre centre(int pairs) {
        return centre(pairs, 2);
    }

    public static Centre centre(int pairs, int machines) {
        return Fixtures.centre(pairs, Fixtures.machines(machines, STRIP_MS, OIL_MS));
    }

    /** The centre with more pairs, which are kept spare. */
    public static Centre withSparePairs(Centre centre, List<LanePair> spare) {
        List<LanePair> all = new ArrayList<>(centre.pairs());
        all.addAll(spare);
        return new Centre(all, centre.surface(), centre.machines(), centre.topographies(), spare);
    }

    public static Level level(String id) {
        return Levels.shipped().get(id);
    }

    /** A level with another adaptation. */
    public static Level level(String spreadOf, Adaptation adaptation) {
        return new Level("test", level(spreadOf).spread(), adaptation, 0, "assumption");
    }

    public static Level withoutSpread() {
        return new Level(
                "exact",
                new ReleaseSpread(0, 0, 0, 0),
                new Adaptation(0, 0.5, 1, 1, Reckoning.byOwnBalls(0.3)),
                0,
                "assumption");
    }

    public static Bowler bowler(String id, Hand hand, String style, Level level, String cover) {
        return Fixtures.bowler(id, hand, style, level, cover);
    }

    public static Bowler bowler(String id) {
        return bowler(id, Hand.RIGHT, "tweener", level("scratch"), "medium-reactive");
    }

    /** Bowler i is the same whatever the seed of the event: his attributes follow from his number. */
    public static Bowler mixed(String id, int i) {
        return bowler(
                id,
                i % 7 == 6 ? Hand.LEFT : Hand.RIGHT,
                STYLES.get(i % 4),
                level(LEVELS.get(i / 2 % 3)),
                COVERS.get(i / 3 % 4));
    }

    /** Groups {@code 1}, {@code 2}, ... of mixed bowlers, of the given sizes. */
    public static List<Group> groups(int... sizes) {
        List<Group> groups = new ArrayList<>();
        int next = 0;
        for (int g = 0; g < sizes.length; g++) {
            List<Bowler> bowlers = new ArrayList<>();
            for (int b = 0; b < sizes[g]; b++) {
                bowlers.add(mixed((g + 1) + "-" + (b + 1), next++));
            }
            groups.add(new Group(String.valueOf(g + 1), bowlers));
        }
        return groups;
    }

    /** Groups of casual bowlers of all four styles, all of one size. */
    public static List<Group> casualGroups(int groups, int size) {
        return IntStream.range(0, groups)
                .mapToObj(g -> new Group(
                        String.valueOf(g + 1),
                        IntStream.range(0, size)
                                .mapToObj(b -> bowler(
                                        (g + 1) + "-" + (b + 1),
                                        Hand.RIGHT,
                                        STYLES.get((g + b) % 4),
                                        level("casual"),
                                        "medium-reactive"))
                                .toList()))
                .toList();
    }

    public static List<Group> oneGroup(Bowler... bowlers) {
        return List.of(new Group("1", List.of(bowlers)));
    }

    public static Squad squad(String id, long startMs, Conditioning conditioning, List<Group> groups) {
        return Fixtures.squad(id, startMs, conditioning, PRACTICE_MS, groups);
    }

    public static Event event(Centre centre, Rotation rotation, Squad... squads) {
        return event(centre, rotation, STEADY, squads);
    }

    public static Event event(Centre centre, Rotation rotation, PaceOfPlay pace, Squad... squads) {
        List<Rotation> rotations =
                IntStream.range(0, squads.length).mapToObj(s -> rotation).toList();
        return Fixtures.event("test", centre, PATTERN, List.of(squads), rotations, pace);
    }

    /** One squad on fresh oil. */
    public static Event event(Centre centre, Rotation rotation, List<Group> groups) {
        return event(centre, rotation, squad("A", START_MS, Conditioning.STRIP_AND_OIL, groups));
    }

    /** One pair, one group, all games on it. */
    public static Event onePair(int games, Bowler... bowlers) {
        return event(centre(1), stay(1, 1, games), oneGroup(bowlers));
    }

    public static Rotation stay(int groups, int pairs, int games) {
        List<Integer> row = IntStream.range(0, groups).boxed().toList();
        return new Explicit(java.util.Collections.nCopies(games, row)).plan(groups, pairs, games);
    }

    /** Any rotation without collisions: every game is a random injection of groups into pairs. */
    public static Rotation random(int groups, int pairs, int games, Random random) {
        List<List<Integer>> table = new ArrayList<>();
        for (int game = 0; game < games; game++) {
            List<Integer> row =
                    new ArrayList<>(IntStream.range(0, pairs).boxed().toList());
            java.util.Collections.shuffle(row, random);
            table.add(row.subList(0, groups));
        }
        return new Explicit(table).plan(groups, pairs, games);
    }

    public static EventResult play(Event event, long seed) {
        return play(event, seed, false);
    }

    public static EventResult play(Event event, long seed, boolean withWindows) {
        StartingLines lines = new StartingLines(event, PHYSICS);
        return new TournamentSimulation(
                        setup(event, lines, seed).recording(withWindows ? LaneRecords.WINDOWS : LaneRecords.FILMS))
                .play();
    }

    /** The first playing of a seed. */
    static Setup setup(Event event, StartingLines lines, long seed) {
        return Setup.of(event, PHYSICS, lines, LuckSource.byBall(new RandomStreams(seed).forReplication(0)));
    }

    public static double mean(EventResult result) {
        return result.squads().stream()
                .mapToDouble(SquadResult::meanScore)
                .average()
                .orElseThrow();
    }

    /** The same playing with other agents, to compare one bowler's ways among bowlers who keep theirs. */
    static Setup withAgents(Setup setup, AgentSource agents) {
        return new Setup(
                setup.event(),
                setup.physics(),
                setup.startingLines(),
                setup.luck(),
                setup.records(),
                setup.observers(),
                agents,
                setup.balls(),
                setup.simulator());
    }

    /** The same playing on another clock, such as one that permutes events of the same time and phase. */
    static Setup on(Simulator clock, Setup setup) {
        return new Setup(
                setup.event(),
                setup.physics(),
                setup.startingLines(),
                setup.luck(),
                setup.records(),
                setup.observers(),
                setup.agents(),
                setup.balls(),
                clock);
    }
}
