package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.FaultResponse;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.LaneCourtesy;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.PlannedFault;
import lanetide.squads.model.Squad;
import lanetide.squads.model.Stops;
import lanetide.squads.play.WatchedSquad.Shot;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.LaneStop;
import lanetide.squads.result.WaitCause;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lanes that go out of order, and what the director does. */
class IncidentsTest {
    private static final long FAULT_MS = Events.START_MS + 15 * Events.MINUTE_MS;
    private static final long WORK_MS = 40 * Events.MINUTE_MS;
    private static final List<LanePair> SPARE = List.of(new LanePair(9, 10));

    /** Three groups of three on lanes 1 to 6, two games; lane 3 fails in the first. */
    private static Event event(FaultResponse remedy, List<LanePair> spare, long workMs) {
        return event(Events.withSparePairs(Events.centre(3), spare), remedy, 3, workMs);
    }

    /** Three groups of three on the pairs that are not spare, two games; a lane fails in the first. */
    private static Event event(Centre centre, FaultResponse remedy, int lane, long workMs) {
        PlannedFault fault = new PlannedFault(lane, FAULT_MS, workMs);
        return Events.event(centre, centre.plan(new Stay(), 3, 2), Events.groups(3, 3, 3))
                .withIncidents(
                        new Incidents(Stops.NEVER, Stops.NEVER, List.of(fault), 1, remedy, 10 * Events.MINUTE_MS));
    }

    private static List<Shot> ofSecondGroup(WatchedSquad watched, int game) {
        return watched.game().stream()
                .filter(shot -> shot.bowler().startsWith("2-") && shot.game() == game)
                .toList();
    }

    @Test
    void whoWaitsBowlsOnTheSameLaneWhenItIsInOrderAgain() {
        WatchedSquad watched = WatchedSquad.play(event(FaultResponse.WAIT, List.of(), WORK_MS), 1);

        List<Shot> onLane =
                watched.game().stream().filter(shot -> shot.lane() == 3).toList();
        assertThat(onLane.stream()
                        .filter(shot -> shot.timeMs() > FAULT_MS + Events.MINUTE_MS)
                        .findFirst()
                        .orElseThrow()
                        .timeMs())
                .isEqualTo(FAULT_MS + WORK_MS + Events.STEADY.firstShotMs());
        assertThat(watched.pace.waitedMs().get(WaitCause.FAULT)).isGreaterThan(WORK_MS - 5 * Events.MINUTE_MS);
        assertThat(watched.game()).extracting(Shot::lane).containsOnly(1, 2, 3, 4, 5, 6);
    }

    @Test
    void aGroupGoesOnWithItsGameOnTheSparePairAndStaysThereWhileItsOwnIsOutOfOrder() {
        WatchedSquad watched = WatchedSquad.play(event(FaultResponse.SPARE, SPARE, WORK_MS), 1);

        List<Shot> first = ofSecondGroup(watched, 0);
        assertThat(first).extracting(Shot::lane).contains(3, 4, 9, 10);
        long movedMs = first.stream()
                .filter(shot -> shot.lane() >= 9)
                .findFirst()
                .orElseThrow()
                .timeMs();
        assertThat(first).allSatisfy(shot -> assertThat(shot.lane() >= 9).isEqualTo(shot.timeMs() >= movedMs));
        // Six lanes further by 20 s for two, settled for two minutes, then the first shot.
        long lastMs = first.stream()
                .filter(shot -> shot.timeMs() < movedMs)
                .mapToLong(Shot::timeMs)
                .max()
                .orElseThrow();
        assertThat(movedMs - lastMs).isGreaterThan(60_000 + 120_000 + Events.STEADY.firstShotMs());
        assertEveryFrameOnce(first);
    }

    @Test
    void ofSeveralSparePairsTheNearestIsTakenWhereverItStandsInTheRow() {
        Centre centre =
                Events.centre(6).withSpare(List.of(new LanePair(1, 2), new LanePair(7, 8), new LanePair(11, 12)));
        Event event = event(centre, FaultResponse.SPARE, 5, WORK_MS);

        List<Shot> moved = ofSecondGroup(WatchedSquad.play(event, 1), 0);

        assertThat(moved).extracting(Shot::lane).containsOnly(5, 6, 7, 8);
        assertEveryFrameOnce(moved);
    }

    @Test
    void sparePairsAreOiledAlikeAndStayAsTheyWereLaidWhileNobodyIsSentThere() {
        Centre centre = Events.centre(4).withSpare(List.of(new LanePair(5, 6)));
        Event event = Events.event(centre, centre.plan(new Ring(1, 1), 3, 3), Events.groups(2, 2, 2));

        EventResult result = Events.play(event, 1);

        assertThat(result.lanes())
                .filteredOn(state -> state.lane() == 5 || state.lane() == 6)
                .isNotEmpty()
                .allSatisfy(state -> assertThat(state.volumeMl()).isCloseTo(Events.PATTERN.volumeMl(), within(1e-9)));
        assertThat(result.oil().appliedMl()).isCloseTo(8 * Events.PATTERN.volumeMl(), within(1e-9));
    }

    @Test
    void aSplitGroupFinishesItsGameWithTheOthersAndMeetsAgainForTheNext() {
        WatchedSquad watched = WatchedSquad.play(event(FaultResponse.SPLIT, List.of(), WORK_MS), 1);

        List<Shot> first = ofSecondGroup(watched, 0);
        assertThat(first.stream().filter(shot -> shot.timeMs() > FAULT_MS + 5 * Events.MINUTE_MS))
                .isNotEmpty()
                .allSatisfy(shot -> assertThat(shot.lane()).isIn(1, 2, 5, 6));
        assertThat(first.stream().filter(shot -> shot.lane() == 1).map(Shot::bowler))
                .isNotEmpty();
        assertThat(first.stream().filter(shot -> shot.lane() == 6).map(Shot::bowler))
                .isNotEmpty();
        assertEveryFrameOnce(first);
        assertThat(ofSecondGroup(watched, 1)).isNotEmpty();
    }

    private static void assertEveryFrameOnce(List<Shot> shots) {
        for (int bowler = 1; bowler <= 3; bowler++) {
            String name = "2-" + bowler;
            assertThat(shots.stream()
                            .filter(shot -> shot.bowler().equals(name))
                            .map(Shot::frame)
                            .distinct())
                    .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
        }
    }

    @Test
    void aShortStopIsWaitedForWhateverTheRemedy() {
        Event wait = event(FaultResponse.WAIT, SPARE, 3 * Events.MINUTE_MS);

        for (FaultResponse remedy : List.of(FaultResponse.SPARE, FaultResponse.SPLIT)) {
            Event other = event(remedy, SPARE, 3 * Events.MINUTE_MS);
            assertThat(Events.play(other, 1)).isEqualTo(Events.play(wait, 1));
        }
    }

    @Test
    void aGroupWithoutASparePairWaits() {
        assertThat(Events.play(event(FaultResponse.SPARE, List.of(), WORK_MS), 1)
                        .squads())
                .isEqualTo(Events.play(event(FaultResponse.WAIT, List.of(), WORK_MS), 1)
                        .squads());
    }

    @Test
    void oneCrewPutsOneLaneInOrderAfterTheOther() {
        Incidents one = new Incidents(
                Stops.NEVER,
                Stops.NEVER,
                List.of(new PlannedFault(1, FAULT_MS, WORK_MS), new PlannedFault(6, FAULT_MS, WORK_MS)),
                1,
                FaultResponse.WAIT,
                0);
        Event event = Events.event(Events.centre(3), Events.stay(3, 3, 2), Events.groups(3, 3, 3));

        List<LaneStop> stops = Events.play(event.withIncidents(one), 1).stops();
        List<LaneStop> withTwo = Events.play(
                        event.withIncidents(
                                new Incidents(one.jams(), one.faults(), one.planned(), 2, FaultResponse.WAIT, 0)),
                        1)
                .stops();

        assertThat(stops)
                .containsExactly(
                        new LaneStop(1, LaneStop.Kind.FAULT, FAULT_MS, FAULT_MS + WORK_MS),
                        new LaneStop(6, LaneStop.Kind.FAULT, FAULT_MS, FAULT_MS + 2 * WORK_MS));
        assertThat(withTwo).extracting(LaneStop::endMs).containsOnly(FAULT_MS + WORK_MS);
    }

    /** Over 200 000 frames the mean count between stops is the given one, and the work has its mean and spread. */
    @Test
    void stopsComeAsOftenAndLastAsLongAsTheyAreSaidTo() {
        double every = 40;
        StopClock clock = new StopClock(new Stops(every, 120_000, 0.5), new RandomStreams(5), "lane/1/jam");
        int frames = 200_000;
        long stops = IntStream.range(0, frames).filter(i -> clock.ticks()).count();
        double[] work =
                LongStream.range(0, 20_000).mapToDouble(i -> clock.workMs()).toArray();
        double mean = Arrays.stream(work).average().orElseThrow();

        double expected = frames / every;
        assertThat((double) stops).isCloseTo(expected, within(4 * Math.sqrt(expected)));
        assertThat(mean).isCloseTo(120_000, within(4 * 60_000 / Math.sqrt(20_000)));
    }

    @Test
    void jamsMakeTheDayLongerAndChangeNobodysLuck() {
        Event event = Events.event(Events.centre(2), Events.stay(2, 2, 3), Events.groups(3, 3));
        Incidents jams =
                new Incidents(new Stops(25, 90_000, 0.5), Stops.NEVER, List.of(), 1, FaultResponse.WAIT, 600_000);

        EventResult with = Events.play(event.withIncidents(jams), 3);
        EventResult without = Events.play(event, 3);

        assertThat(with.stops())
                .isNotEmpty()
                .allSatisfy(stop -> assertThat(stop.kind()).isEqualTo(LaneStop.Kind.JAM));
        assertThat(with.squads().get(0).endMs())
                .isGreaterThan(without.squads().get(0).endMs());
        assertThat(with.squads().get(0).pace().waitedMs()).containsKey(WaitCause.FAULT);
        assertThat(without.stops()).isEmpty();
    }

    /** Whatever happens to lanes, everybody bowls all his games, the oil is found again, and the day ends. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24})
    void anyEventComesToItsEnd(long seed) {
        Random random = new Random(seed);
        int pairs = 1 + random.nextInt(4);
        int[] sizes = IntStream.range(0, 1 + random.nextInt(pairs))
                .map(g -> 1 + random.nextInt(4))
                .toArray();
        Rotation planned = Events.random(sizes.length, pairs, 1 + random.nextInt(4), random);
        List<LanePair> spare = IntStream.range(0, random.nextInt(3))
                .mapToObj(i -> new LanePair(101 + 2 * i, 102 + 2 * i))
                .toList();
        Centre centre = Events.withSparePairs(Events.centre(pairs), spare);
        Rotation rotation = centre.plan(written(planned), sizes.length, planned.games());
        Squad[] squads = IntStream.range(0, 1 + random.nextInt(2))
                .mapToObj(s -> Events.squad(
                        String.valueOf((char) ('A' + s)),
                        Events.START_MS + s * 60L * Events.MINUTE_MS,
                        s == 0 ? Conditioning.STRIP_AND_OIL : Conditioning.NONE,
                        Events.groups(sizes)))
                .toArray(Squad[]::new);
        PaceOfPlay pace = Fixtures.withCourtesy(PaceOfPlay.USUAL, new LaneCourtesy(random.nextInt(3), 6_000));
        Event event = Events.event(centre, rotation, pace, squads)
                .withIncidents(new Incidents(
                        random.nextBoolean() ? new Stops(8 + random.nextInt(40), 60_000, 0.5) : Stops.NEVER,
                        new Stops(15 + random.nextInt(60), 25 * Events.MINUTE_MS, 1),
                        List.of(new PlannedFault(1, Events.START_MS + random.nextInt(90) * Events.MINUTE_MS, WORK_MS)),
                        1 + random.nextInt(2),
                        List.of(FaultResponse.values()).get(random.nextInt(3)),
                        random.nextInt(15) * Events.MINUTE_MS));

        EventResult result = Events.play(event, seed);

        assertThat(result.squads()).as("seed %d", seed).hasSize(squads.length).allSatisfy(squad -> {
            assertThat(squad.bowlers()).hasSize(IntStream.of(sizes).sum());
            assertThat(squad.bowlers())
                    .allSatisfy(bowler -> assertThat(bowler.scores()).hasSize(rotation.games()));
            assertThat(squad.pace().bowlerGames()).isEqualTo(IntStream.of(sizes).sum() * rotation.games());
        });
        assertThat(result.oil().relativeError()).as("seed %d", seed).isLessThan(1e-9);
        assertThat(Events.play(event, seed)).isEqualTo(result);
    }

    private static Explicit written(Rotation rotation) {
        return new Explicit(IntStream.range(0, rotation.games())
                .mapToObj(game -> IntStream.range(0, rotation.groups())
                        .map(group -> rotation.pairOf(game, group))
                        .boxed()
                        .toList())
                .toList());
    }
}
