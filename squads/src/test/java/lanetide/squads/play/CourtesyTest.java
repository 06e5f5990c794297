package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lanetide.des.Simulator;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.LaneCourtesy;
import lanetide.squads.model.Laws;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.result.WaitCause;
import lanetide.squads.rotation.Rotation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lane courtesy: who waits for whom, and what it costs. */
class CourtesyTest {
    private static final long APPROACH_MS = 5_000;

    private final Simulator simulator = new Simulator();
    private final Map<String, Long> releases = new TreeMap<>();

    /** Releases of one bowler on each lane, who start to get ready at the given times and need just the approach. */
    private Map<String, Long> releases(int courtesyLanes, long... readyMs) {
        Approaches approaches = approaches(courtesyLanes, readyMs.length);
        for (int i = 0; i < readyMs.length; i++) {
            shoot(approaches, i + 1, readyMs[i], "lane " + (i + 1));
        }
        simulator.run();
        return releases;
    }

    private Approaches approaches(int courtesyLanes, int lanes) {
        return new Approaches(
                simulator,
                new LaneCourtesy(courtesyLanes, APPROACH_MS),
                IntStream.rangeClosed(1, lanes)
                        .mapToObj(lane -> new LaneInPlay(lane, Events.PHYSICS.grid(), Topography.FLAT, List.of()))
                        .toList());
    }

    private void shoot(Approaches approaches, int lane, long readyMs, String name) {
        approaches.shoot(
                lane,
                readyMs - simulator.nowMs(),
                APPROACH_MS,
                waitedMs -> {},
                () -> releases.put(name, simulator.nowMs()));
    }

    @Test
    void withoutCourtesyNobodyWaits() {
        assertThat(releases(0, 0, 0, 0))
                .containsExactly(Map.entry("lane 1", 5_000L), Map.entry("lane 2", 5_000L), Map.entry("lane 3", 5_000L));
    }

    /** Source: bowlcentralohio etiquette, as quoted: of two who are ready the bowler on the right goes first. */
    @Test
    void ofTwoWhoAreReadyTheBowlerOnTheRightGoesFirst() {
        assertThat(releases(1, 0, 0)).containsExactly(Map.entry("lane 1", 10_000L), Map.entry("lane 2", 5_000L));
    }

    @Test
    void aBowlerOnTheApproachIsNotDisturbed() {
        assertThat(releases(1, 0, 1_000)).containsExactly(Map.entry("lane 1", 5_000L), Map.entry("lane 2", 10_000L));
    }

    @Test
    void bowlersTwoLanesApartShootTogetherUnderOneLaneCourtesyAndInTurnUnderTwo() {
        assertThat(releases(1, 0, 20_000, 0)).contains(Map.entry("lane 1", 5_000L), Map.entry("lane 3", 5_000L));
        releases.clear();
        long nowMs = simulator.nowMs();
        assertThat(releases(2, nowMs, nowMs + 20_000, nowMs))
                .contains(Map.entry("lane 1", nowMs + 10_000), Map.entry("lane 3", nowMs + 5_000));
    }

    /**
     * Lanes 1 and 3 are ready again and again, one of them always on the approach; lane 2 is passed over once by each.
     */
    @Test
    void aBowlerBetweenTwoBusyNeighboursIsNotPassedOverWithoutEnd() {
        Approaches approaches = approaches(1, 3);
        for (int shot = 0; shot < 20; shot++) {
            shoot(approaches, 1, shot * APPROACH_MS, "lane 1 shot " + shot);
            shoot(approaches, 3, shot * APPROACH_MS + 2_500, "lane 3 shot " + shot);
        }
        shoot(approaches, 2, 1_000, "lane 2");

        simulator.run();

        assertThat(releases.get("lane 2")).isLessThanOrEqualTo(1_000 + 4 * APPROACH_MS);
    }

    @ParameterizedTest(name = "{0} lanes, seed {1}")
    @CsvSource({"1, 1", "1, 2", "2, 3", "2, 4"})
    void noTwoNeighboursAreOnTheApproachAtOnce(int lanes, long seed) {
        Event event = event(Fixtures.withCourtesy(usual(), new LaneCourtesy(lanes, APPROACH_MS)), 3, 4, 2, 4, 1);

        WatchedSquad watched = WatchedSquad.play(event, seed);

        List<WatchedSquad.Shot> shots = watched.game();
        for (int i = 0; i < shots.size(); i++) {
            for (int j = i + 1; j < shots.size(); j++) {
                long apartMs = shots.get(j).timeMs() - shots.get(i).timeMs();
                int lanesApart = Math.abs(shots.get(j).lane() - shots.get(i).lane());
                if (lanesApart > 0 && lanesApart <= lanes) {
                    assertThat(apartMs)
                            .as("%s and %s", shots.get(i), shots.get(j))
                            .isGreaterThanOrEqualTo(APPROACH_MS);
                }
            }
        }
        assertThat(watched.pace.minutesWaited(WaitCause.NEIGHBOUR).orElseThrow())
                .isPositive();
    }

    /**
     * Where balls move no oil, every shot is what it is whenever it comes; then lane courtesy can only put things off,
     * at every single game.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void withoutTheNeighbourRuleNoGameEverEndsLater(long seed) {
        Random random = new Random(seed);
        int pairs = 1 + random.nextInt(4);
        int[] sizes = IntStream.range(0, 1 + random.nextInt(pairs))
                .map(g -> 1 + random.nextInt(4))
                .toArray();
        Rotation rotation = Events.random(sizes.length, pairs, 1 + random.nextInt(3), random);
        Squad squad = Fixtures.squad("A", Events.START_MS, Conditioning.OIL_OVER, 0, Events.groups(sizes));
        LaneCourtesy courtesy = new LaneCourtesy(1 + random.nextInt(2), random.nextInt(20_000));

        List<TimetableEntry> with = timetable(Fixtures.withCourtesy(usual(), courtesy), pairs, rotation, squad, seed);
        List<TimetableEntry> without =
                timetable(Fixtures.withCourtesy(usual(), LaneCourtesy.NONE), pairs, rotation, squad, seed);

        assertThat(without).hasSameSizeAs(with);
        for (int i = 0; i < with.size(); i++) {
            assertThat(without.get(i).endMs())
                    .as("seed %d, game %d", seed, with.get(i).game())
                    .isLessThanOrEqualTo(with.get(i).endMs());
        }
    }

    private static List<TimetableEntry> timetable(
            PaceOfPlay pace, int pairs, Rotation rotation, Squad squad, long seed) {
        Event event = Events.event(Events.centre(pairs), rotation, pace, squad)
                .withLaws(new Laws(Laws.USUAL.friction(), SplitModel.NONE));
        Physics physics = Physics.under(event.laws());
        return new TournamentSimulation(Setup.of(
                        event,
                        physics,
                        new StartingLines(event, physics),
                        LuckSource.byBall(new RandomStreams(seed).forReplication(0))))
                .play()
                .timetable();
    }

    @Test
    void moreCourtesyMakesALongerDay() {
        List<Double> hours = new ArrayList<>();
        for (int lanes = 0; lanes <= 2; lanes++) {
            Event event = event(Fixtures.withCourtesy(usual(), new LaneCourtesy(lanes, 8_000)), 3, 4, 4, 4, 4);
            hours.add(IntStream.range(0, 6)
                    .mapToLong(seed -> Events.play(event, seed).squads().get(0).endMs())
                    .average()
                    .orElseThrow());
        }

        assertThat(hours.get(0)).isLessThan(hours.get(1));
        assertThat(hours.get(1)).isLessThan(hours.get(2));
    }

    @Test
    void aLoneBowlerWaitsForNobodyAndTwoWaitForEachOther() {
        assertThat(Events.play(event(usual(), 2, 1), 3).squads().get(0).pace().waitedMs())
                .isEmpty();

        PaceKept two = Events.play(event(usual(), 2, 2), 3).squads().get(0).pace();
        assertThat(two.waitedMs()).containsOnlyKeys(WaitCause.NEIGHBOUR, WaitCause.PARTNER);
        assertThat(two.bowlerGames()).isEqualTo(2 * 2);
        assertThat(two.minutesPerBowlerGame().orElseThrow())
                .isGreaterThan(two.minutesWaited(WaitCause.NEIGHBOUR).orElseThrow()
                        + two.minutesWaited(WaitCause.PARTNER).orElseThrow());
    }

    private static PaceOfPlay usual() {
        return PaceOfPlay.USUAL;
    }

    private static Event event(PaceOfPlay pace, int games, int... sizes) {
        Squad squad = Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.groups(sizes));
        int pairs = sizes.length;
        return Events.event(Events.centre(pairs), Events.stay(pairs, pairs, games), pace, squad);
    }
}
