package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LaneCourtesy;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.play.WatchedSquad.Shot;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.score.TenpinScore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who throws when and where, seen from the films and the balls. */
class PlayTest {
    private static final PaceOfPlay PACE = Events.STEADY;
    private static final long QUICKEST_TRAVEL_MS = 500;
    private static final long SLOWEST_TRAVEL_MS = 4_000;

    @Test
    void everyBowlerPlaysEveryGameOnThePairTheRotationSays() {
        Rotation rotation = new Explicit(List.of(List.of(2, 0, 1), List.of(3, 1, 2), List.of(0, 3, 1))).plan(3, 4, 3);
        Event event = Events.event(Events.centre(4), rotation, Events.groups(2, 3, 1));

        WatchedSquad watched = WatchedSquad.play(event, 1);

        assertThat(lanesByBowlerAndGame(watched)).isEqualTo(lanesOf(event));
        assertThat(watched.groups)
                .allSatisfy(group -> assertThat(group)
                        .allSatisfy(bowler ->
                                assertThat(bowler.result("", 0).scores()).hasSize(3)));
    }

    private static Map<String, List<Integer>> lanesByBowlerAndGame(WatchedSquad watched) {
        return watched.game().stream()
                .collect(Collectors.groupingBy(
                        shot -> shot.bowler() + " game " + shot.game(),
                        TreeMap::new,
                        Collectors.collectingAndThen(
                                Collectors.toList(),
                                shots -> shots.stream()
                                        .map(Shot::lane)
                                        .distinct()
                                        .sorted()
                                        .toList())));
    }

    private static Map<String, List<Integer>> lanesOf(Event event) {
        Map<String, List<Integer>> lanes = new TreeMap<>();
        Rotation rotation = event.rotations().get(0);
        List<Group> groups = event.squads().get(0).groups();
        for (int g = 0; g < groups.size(); g++) {
            for (int game = 0; game < rotation.games(); game++) {
                LanePair pair = event.centre().pairs().get(rotation.pairOf(game, g));
                for (Bowler bowler : groups.get(g).bowlers()) {
                    lanes.put(bowler.id() + " game " + game, List.of(pair.left(), pair.right()));
                }
            }
        }
        return lanes;
    }

    @ParameterizedTest(name = "a group of {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void bowlersChangeLanesAfterEveryFrame(int size) {
        WatchedSquad watched =
                WatchedSquad.play(Events.event(Events.centre(1), Events.stay(1, 1, 2), Events.groups(size)), 3);

        assertThat(watched.game()).isNotEmpty().allSatisfy(shot -> {
            int number = Integer.parseInt(shot.bowler().substring(2));
            boolean startsLeft = number <= (size + 1) / 2;
            assertThat(shot.lane()).as("%s", shot).isEqualTo(startsLeft == (shot.frame() % 2 == 1) ? 1 : 2);
        });
    }

    @Test
    void bowlersOnALaneThrowInTheirOrder() {
        WatchedSquad watched =
                WatchedSquad.play(Events.event(Events.centre(1), Events.stay(1, 1, 1), Events.groups(5)), 3);

        List<String> turns = watched.game().stream()
                .filter(shot -> shot.lane() == 1)
                .map(shot -> shot.frame() + " " + shot.bowler())
                .distinct()
                .toList();

        assertThat(turns).startsWith("1 1-1", "1 1-2", "1 1-3", "2 1-4", "2 1-5", "3 1-1", "3 1-2", "3 1-3", "4 1-4");
    }

    @Test
    void aFramesNextBallFollowsAtThePaceOfSpareShots() {
        WatchedSquad watched =
                WatchedSquad.play(Events.event(Events.centre(1), Events.stay(1, 1, 2), Events.groups(4)), 5);
        long leastMs = PACE.pinsetterMs() + PACE.spareShotMs() + QUICKEST_TRAVEL_MS;
        long mostMs = PACE.pinsetterMs() + PACE.spareShotMs() + SLOWEST_TRAVEL_MS;

        List<Shot> game = watched.game();
        int seconds = 0;
        for (int i = 0; i < game.size(); i++) {
            Shot next = nextOnLane(game, i);
            if (next != null && sameFrame(game.get(i), next)) {
                seconds++;
                assertThat(next.timeMs() - game.get(i).timeMs()).isBetween(leastMs, mostMs);
            }
        }
        assertThat(seconds).isGreaterThan(20);
    }

    private static Shot nextOnLane(List<Shot> shots, int from) {
        return shots.subList(from + 1, shots.size()).stream()
                .filter(shot -> shot.lane() == shots.get(from).lane())
                .findFirst()
                .orElse(null);
    }

    private static boolean sameFrame(Shot one, Shot other) {
        return one.bowler().equals(other.bowler()) && one.game() == other.game() && one.frame() == other.frame();
    }

    @Test
    void aLoneBowlersFramesFollowAtThePaceOfFirstShots() {
        WatchedSquad watched = WatchedSquad.play(
                Events.onePair(1, Events.bowler("a", Hand.RIGHT, "tweener", Events.level("elite"), "urethane")), 2);

        List<Shot> game = watched.game();
        for (int i = 1; i < game.size(); i++) {
            boolean first = game.get(i).frame() > game.get(i - 1).frame();
            long paceMs = PACE.pinsetterMs() + (first ? PACE.firstShotMs() : PACE.spareShotMs());
            assertThat(game.get(i).timeMs() - game.get(i - 1).timeMs())
                    .isBetween(paceMs + QUICKEST_TRAVEL_MS, paceMs + SLOWEST_TRAVEL_MS);
        }
    }

    @ParameterizedTest(name = "a group of {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void practiceLastsAsPlannedAndNobodyThrowsAfterItsEnd(int size) {
        WatchedSquad watched =
                WatchedSquad.play(Events.event(Events.centre(1), Events.stay(1, 1, 1), Events.groups(size)), 4);
        long endMs = Events.START_MS + Events.PRACTICE_MS;

        assertThat(watched.practice()).isNotEmpty().allSatisfy(shot -> {
            assertThat(shot.timeMs()).isGreaterThanOrEqualTo(Events.START_MS + PACE.spareShotMs());
            assertThat(shot.timeMs()).isLessThan(endMs);
        });
        assertThat(watched.game().get(0).timeMs())
                .isBetween(
                        endMs + PACE.firstShotMs(),
                        endMs + PACE.firstShotMs() + PACE.pinsetterMs() + SLOWEST_TRAVEL_MS);
        assertThat(watched.practice()).extracting(Shot::lane).contains(1, 2);
        assertThat(watched.practice().stream().map(Shot::bowler).distinct()).hasSize(size);
    }

    @Test
    void thePairsOfAPracticeBeginTheirFirstGameTogether() {
        WatchedSquad watched =
                WatchedSquad.play(Events.event(Events.centre(3), Events.stay(3, 3, 1), Events.groups(1, 4, 2)), 4);

        List<Long> firsts = IntStream.of(1, 3, 5)
                .mapToObj(lane -> watched.game().stream()
                        .filter(shot -> shot.lane() == lane)
                        .findFirst()
                        .orElseThrow()
                        .timeMs())
                .toList();

        long endMs = Events.START_MS + Events.PRACTICE_MS + PACE.firstShotMs();
        assertThat(firsts)
                .allSatisfy(ms -> assertThat(ms).isBetween(endMs, endMs + PACE.pinsetterMs() + SLOWEST_TRAVEL_MS));
    }

    @Test
    void withoutPracticeTheFirstBallCounts() {
        Squad squad = Fixtures.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, 0, Events.groups(2));
        PaceOfPlay still = new PaceOfPlay(0, 0, 0, 0, 0, 0, 0, LaneCourtesy.NONE);

        WatchedSquad watched = WatchedSquad.play(Events.event(Events.centre(1), Events.stay(1, 1, 1), still, squad), 1);

        assertThat(watched.practice()).isEmpty();
        assertThat(watched.timetable)
                .extracting(TimetableEntry::what)
                .containsExactly(TimetableEntry.Activity.CONDITIONING, TimetableEntry.Activity.GAME);
    }

    @Test
    void aGroupWalksPastEveryPairAndSettles() {
        List<LanePair> pairs = List.of(new LanePair(1, 2), new LanePair(9, 10));
        Centre usual = Events.centre(1);
        Centre apart = new Centre(pairs, usual.surface(), usual.machines(), Map.of(), List.of());
        Rotation rotation = new Explicit(List.of(List.of(0), List.of(1), List.of(1))).plan(1, 2, 3);

        WatchedSquad watched = WatchedSquad.play(Events.event(apart, rotation, Events.groups(2)), 1);

        long walkedMs = 4 * PACE.movePerPairMs() + PACE.settleMs() + PACE.firstShotMs();
        assertThat(pauseBefore(watched, 1)).isEqualTo(walkedMs);
        assertThat(pauseBefore(watched, 2)).isEqualTo(PACE.firstShotMs());
    }

    /** From the end of the game before to the first release of a game. */
    private static long pauseBefore(WatchedSquad watched, int game) {
        return watched.game().stream()
                        .filter(shot -> shot.game() == game)
                        .findFirst()
                        .orElseThrow()
                        .timeMs()
                - watched.timetable.stream()
                        .filter(entry -> entry.game() == game)
                        .findFirst()
                        .orElseThrow()
                        .endMs();
    }

    @Test
    void aQuickGroupWaitsForTheSlowOneOnItsNextPair() {
        Rotation swap = new Explicit(List.of(List.of(0, 1), List.of(1, 0))).plan(2, 2, 2);
        Event event = Events.event(Events.centre(2), swap, Events.groups(1, 4));

        WatchedSquad watched = WatchedSquad.play(event, 1);

        long slowDoneMs = last(watched, "2-", 0);
        long quickDoneMs = last(watched, "1-", 0);
        assertThat(quickDoneMs).isLessThan(slowDoneMs - 5 * Events.MINUTE_MS);
        assertThat(first(watched, "1-", 1))
                .isBetween(
                        slowDoneMs + PACE.pinsetterMs() + PACE.firstShotMs(),
                        slowDoneMs + PACE.pinsetterMs() + SLOWEST_TRAVEL_MS + PACE.firstShotMs());
    }

    private static long last(WatchedSquad watched, String group, int game) {
        return timesOf(watched, group, game).stream().mapToLong(ms -> ms).max().orElseThrow();
    }

    private static long first(WatchedSquad watched, String group, int game) {
        return timesOf(watched, group, game).stream().mapToLong(ms -> ms).min().orElseThrow();
    }

    private static List<Long> timesOf(WatchedSquad watched, String group, int game) {
        return watched.game().stream()
                .filter(shot -> shot.bowler().startsWith(group) && shot.game() == game)
                .map(Shot::timeMs)
                .toList();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void anyRotationIsPlayedToItsEndAndPairsServeGamesInOrder(long seed) {
        Random random = new Random(seed);
        int pairs = 1 + random.nextInt(4);
        int[] sizes = IntStream.range(0, 1 + random.nextInt(pairs))
                .map(g -> 1 + random.nextInt(3))
                .toArray();
        Rotation rotation = Events.random(sizes.length, pairs, 1 + random.nextInt(4), random);
        Event event = Events.event(
                Events.centre(pairs),
                rotation,
                randomPace(random),
                Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.groups(sizes)));

        WatchedSquad watched = WatchedSquad.play(event, seed);

        assertThat(watched.endMs).as("seed %d: the squad came to an end", seed).isPositive();
        assertThat(lanesByBowlerAndGame(watched)).as("seed %d", seed).isEqualTo(lanesOf(event));
        for (LanePair pair : event.centre().pairs()) {
            List<Integer> games = watched.game().stream()
                    .filter(shot -> shot.lane() == pair.left() || shot.lane() == pair.right())
                    .map(Shot::game)
                    .toList();
            assertThat(games).as("seed %d, pair %s", seed, pair.id()).isSorted();
        }
        assertNobodyIsInTwoPlaces(watched, event.pace(), seed);
    }

    private static PaceOfPlay randomPace(Random random) {
        long[] ms = IntStream.range(0, 7)
                .mapToLong(i -> random.nextInt(4) == 0 ? 0 : random.nextInt(60_000))
                .toArray();
        return new PaceOfPlay(
                ms[0],
                ms[1],
                random.nextInt(3) * 0.3,
                ms[2],
                ms[3],
                ms[4],
                ms[5],
                new LaneCourtesy(random.nextInt(3), ms[6]));
    }

    private static void assertNobodyIsInTwoPlaces(WatchedSquad watched, PaceOfPlay pace, long seed) {
        Map<String, Long> freeAgain = new TreeMap<>();
        for (Shot shot : watched.shots) {
            for (String key : List.of("lane " + shot.lane(), shot.bowler())) {
                assertThat(shot.timeMs())
                        .as("seed %d: %s at %s", seed, key, shot)
                        .isGreaterThanOrEqualTo(freeAgain.getOrDefault(key, 0L));
                freeAgain.put(
                        key, shot.timeMs() + (key.equals(shot.bowler()) ? pace.ballReturnMs() : pace.pinsetterMs()));
            }
        }
    }

    @Test
    void onlyBallsAndMachinesChangeAFilm() {
        WatchedSquad watched =
                WatchedSquad.play(Events.event(Events.centre(3), new Ring(1, 1).plan(2, 3, 3), Events.groups(2, 3)), 8);

        assertThat(watched.filmChanges.keySet())
                .isSubsetOf("lane stripped", "lane oiled", "release", "practice release");
        assertThat(watched.filmChanges.get("lane oiled")).isEqualTo(6);
        assertThat(watched.filmChanges.get("release")).isEqualTo(watched.game().size());
        assertThat(watched.shots).allSatisfy(shot -> assertThat(shot.lane()).isPositive());
    }

    @Test
    void bowlersForgetTheirLanesOnlyWhenTheyMove() {
        Rotation moving = new Explicit(List.of(List.of(0), List.of(1))).plan(1, 2, 2);

        assertThat(linesOfLanesDifferAfterGameOne(Events.stay(1, 2, 2))).isTrue();
        assertThat(linesOfLanesDifferAfterGameOne(moving)).isFalse();
    }

    private static boolean linesOfLanesDifferAfterGameOne(Rotation rotation) {
        List<Boolean> differ = new ArrayList<>();
        for (long seed = 0; seed < 10; seed++) {
            WatchedSquad.play(Events.event(Events.centre(2), rotation, Events.groups(3)), seed, (watched, bowler) -> {
                if (bowler.result("", 0).scores().size() == 1) {
                    differ.add(!bowler.agent().line(1).equals(bowler.agent().line(2)));
                }
            });
        }
        return differ.contains(true);
    }

    @Test
    void aGameHasTenFramesOfOneToThreeBalls() {
        WatchedSquad watched =
                WatchedSquad.play(Events.event(Events.centre(1), Events.stay(1, 1, 3), Events.groups(4)), 6);

        Map<String, Long> balls = watched.game().stream()
                .collect(Collectors.groupingBy(
                        shot -> shot.bowler() + "/" + shot.game() + "/" + shot.frame(),
                        TreeMap::new,
                        Collectors.counting()));

        assertThat(balls).hasSize(4 * 3 * TenpinScore.FRAMES);
        balls.forEach((frame, count) -> {
            boolean tenth = frame.endsWith("/10");
            assertThat(count).as(frame).isBetween(tenth ? 2L : 1L, tenth ? 3L : 2L);
        });
        assertThat(new ArrayList<>(balls.values())).contains(1L, 2L, 3L);
    }
}
