package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePatterns;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.result.TimetableEntry.Activity;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Ring;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Squads one after another: when they start, what the machines do, where the oil goes. */
class DayTest {
    private static int accountsClosed;
    private static final long LATE_MS = Events.START_MS + 8 * 60 * Events.MINUTE_MS;

    @ParameterizedTest(name = "{0} pairs, {1} machines, {2}")
    @CsvSource({
        "1, 1, STRIP_AND_OIL, 180",
        "3, 1, STRIP_AND_OIL, 540",
        "3, 2, STRIP_AND_OIL, 270",
        "3, 4, STRIP_AND_OIL, 180",
        "3, 2, OIL_OVER, 150",
        "2, 9, OIL_OVER, 50"
    })
    void conditioningEndsAtThePlannedStartAndTakesLanesTimesTimeOverMachines(
            int pairs, int machines, Conditioning conditioning, long seconds) {
        Event event = Events.event(
                Events.centre(pairs, machines),
                Events.stay(1, pairs, 1),
                Events.squad("A", Events.START_MS, conditioning, Events.groups(1)));

        TimetableEntry first = Events.play(event, 1).timetable().get(0);

        assertThat(first)
                .isEqualTo(new TimetableEntry(
                        "A", Activity.CONDITIONING, 0, Events.START_MS - seconds * 1000, Events.START_MS));
    }

    @Test
    void aSquadStartsAsPlannedWhenTheOneBeforeHasLeft() {
        EventResult result = twoSquads(LATE_MS, Conditioning.STRIP_AND_OIL);

        assertThat(result.squads()).extracting(SquadResult::startMs).containsExactly(Events.START_MS, LATE_MS);
    }

    @ParameterizedTest
    @EnumSource
    void aSquadStartsLateWhenTheOneBeforeOverruns(Conditioning conditioning) {
        long plannedMs = Events.START_MS + 10 * Events.MINUTE_MS;

        EventResult result = twoSquads(plannedMs, conditioning);

        long machinesMs = switch (conditioning) {
            case NONE -> 0;
            case OIL_OVER -> 2 * Events.OIL_MS;
            case CLEAN_ENDS -> 2 * Events.STRIP_MS;
            case STRIP_AND_OIL -> 2 * (Events.OIL_MS + Events.STRIP_MS);
        };
        long leftMs = result.squads().get(0).endMs();
        assertThat(leftMs).isGreaterThan(plannedMs);
        assertThat(result.squads().get(1).startMs()).isEqualTo(leftMs + machinesMs);
    }

    /** What was carried past the end is gone, and nothing else: the oil before it is as the first squad left it. */
    @Test
    void whereTheEndsAreCleanedASquadFindsTheOldOilWithoutWhatWasCarriedPastIt() {
        EventResult result = twoSquads(LATE_MS, Conditioning.CLEAN_ENDS);

        for (int lane = 1; lane <= 2; lane++) {
            LaneState left = state(result, lane, "A", 2);
            LaneState found = state(result, lane, "B", 0);
            assertThat(left.carrydownMl()).isPositive();
            assertThat(found.carrydownMl()).isZero();
            assertThat(found.volumeMl()).isCloseTo(left.volumeMl() - left.carrydownMl(), within(1e-9));
            assertThat(found.gamesOnOil()).isEqualTo(left.gamesOnOil());
        }
        assertThat(result.oil().relativeError()).isCloseTo(0, within(1e-12));
    }

    private static LaneState state(EventResult result, int lane, String squad, int afterGame) {
        return result.lanes().stream()
                .filter(state -> state.lane() == lane && state.squad().equals(squad) && state.afterGame() == afterGame)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSquadThatCannotBeOiledInTimeAfterTheOneBeforeStartsLate() {
        long leftMs = twoSquads(LATE_MS, Conditioning.OIL_OVER).squads().get(0).endMs();

        EventResult result = twoSquads(leftMs + Events.OIL_MS, Conditioning.OIL_OVER);

        assertThat(result.squads().get(1).startMs()).isEqualTo(leftMs + 2 * Events.OIL_MS);
    }

    @Test
    void theTimetableRunsFromConditioningOverPracticeToTheGamesInOrder() {
        EventResult result = twoSquads(LATE_MS, Conditioning.NONE);

        assertThat(result.timetable())
                .extracting(entry -> entry.squad() + " " + entry.what() + " " + entry.game())
                .containsExactly(
                        "A CONDITIONING 0",
                        "A PRACTICE 0",
                        "A GAME 1",
                        "A GAME 2",
                        "B PRACTICE 0",
                        "B GAME 1",
                        "B GAME 2");
        assertThat(result.timetable())
                .allSatisfy(entry -> assertThat(entry.startMs()).isLessThan(entry.endMs()));
        assertThat(result.timetable()).isSortedAccordingTo((a, b) -> Long.compare(a.startMs(), b.startMs()));
    }

    @Test
    void oilingOverAddsThePattern() {
        EventResult result = twoSquads(LATE_MS, Conditioning.OIL_OVER);

        for (int lane = 1; lane <= 4; lane++) {
            assertThat(asFound(result, "B", lane).volumeMl())
                    .isCloseTo(asLeft(result, lane).volumeMl() + Events.PATTERN.volumeMl(), within(1e-9));
            assertThat(asFound(result, "B", lane).gamesOnOil()).isZero();
        }
    }

    @Test
    void strippingAndOilingBringsTheFreshPatternBack() {
        EventResult result = twoSquads(LATE_MS, Conditioning.STRIP_AND_OIL);

        for (int lane = 1; lane <= 4; lane++) {
            assertThat(oilOf(asFound(result, "B", lane))).isEqualTo(oilOf(asFound(result, "A", lane)));
            assertThat(asLeft(result, lane).volumeMl())
                    .isLessThan(asFound(result, "B", lane).volumeMl());
        }
    }

    @Test
    void withoutConditioningTheNextSquadFindsWhatTheLastOneLeft() {
        EventResult result = twoSquads(LATE_MS, Conditioning.NONE);

        for (int lane = 1; lane <= 4; lane++) {
            LaneState left = asLeft(result, lane);
            LaneState found = asFound(result, "B", lane);
            assertThat(found.volumeMl()).isCloseTo(left.volumeMl(), within(1e-9));
            assertThat(found.carrydownMl()).isEqualTo(left.carrydownMl());
            assertThat(found.headUnitsLow())
                    .as("thick heads level for hours, but do not fill up")
                    .isLessThan(asFound(result, "A", lane).headUnitsLow());
            assertThat(found.gamesOnOil()).isEqualTo(2);
        }
    }

    @Test
    void everyLaneIsOiledWithThePatternOfItsSquad() {
        OilPattern heavy = OilPattern.of("heavy", 41 * LaneGeometry.FOOT_M, 30, 2);
        OilPattern light = OilPattern.of("light", 36 * LaneGeometry.FOOT_M, 20, 5);
        Event alike = Events.event(
                Events.centre(2),
                Events.stay(1, 2, 1),
                Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.groups(2)),
                Events.squad("B", LATE_MS, Conditioning.STRIP_AND_OIL, Events.groups(2)));
        SquadPlan first = alike.plans().get(0);
        Event event = alike.withSquads(
                alike.squads(),
                List.of(
                        first,
                        new SquadPlan(first.rotation(), new LanePatterns(heavy, Map.of(2, light, 3, Events.PATTERN)))));

        EventResult result = Events.play(event, 1);

        assertThat(event.pattern()).isEqualTo(Events.PATTERN);
        assertThat(event.pattern(1, 2)).isEqualTo(light);
        for (int lane = 1; lane <= 4; lane++) {
            assertThat(asFound(result, "A", lane).volumeMl()).isCloseTo(Events.PATTERN.volumeMl(), within(1e-9));
            assertThat(asFound(result, "B", lane).volumeMl())
                    .isCloseTo(event.pattern(1, lane).volumeMl(), within(1e-9));
            assertThat(asFound(result, "B", lane).carrydownMl())
                    .as("measured from the end of the lane's own pattern")
                    .isZero();
        }
    }

    private static List<Double> oilOf(LaneState state) {
        return List.of(state.volumeMl(), state.headUnits(), state.headUnitsLow(), state.carrydownMl());
    }

    private static LaneState asFound(EventResult result, String squad, int lane) {
        return result.lanes().stream()
                .filter(state -> state.lane() == lane && state.squad().equals(squad) && state.afterGame() == 0)
                .findFirst()
                .orElseThrow();
    }

    private static LaneState asLeft(EventResult result, int lane) {
        return result.lanes().stream()
                .filter(state -> state.lane() == lane && state.squad().equals("A"))
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    /** Two squads on two pairs, two games, two machines. */
    private static EventResult twoSquads(long secondStartMs, Conditioning second) {
        Event event = Events.event(
                Events.centre(2),
                new Ring(1, 1).plan(2, 2, 2),
                Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.groups(2, 2)),
                Events.squad("B", secondStartMs, second, Events.groups(1, 2)));
        return Events.play(event, 1);
    }

    @AfterAll
    static void theReadmeSaysHowManyAccountsClose() {
        ReadmeRow.says(
                "oil applied = on lanes, on balls, absorbed, wiped, stripped; random events",
                accountsClosed + " of 12");
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theOilAccountOfAnyEventCloses(long seed) {
        Event event = randomEvent(new Random(seed));

        EventResult result = Events.play(event, seed);

        long oilings = event.squads().stream()
                .filter(squad -> squad.conditioning() != Conditioning.NONE)
                .count();
        assertThat(result.oil().relativeError()).as("seed %d", seed).isLessThan(1e-9);
        accountsClosed++;
        assertThat(result.oil().appliedMl())
                .as("seed %d", seed)
                .isCloseTo(oilings * 2 * event.centre().pairs().size() * Events.PATTERN.volumeMl(), within(1e-6));
        assertThat(result.oil().onBallsMl()).as("seed %d", seed).isGreaterThanOrEqualTo(0);
        assertThat(result.oil().absorbedMl() + result.oil().wipedMl())
                .as("seed %d", seed)
                .isPositive();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void inAnyEventNobodyStartsBeforeThePlanAndEveryGameIsScored(long seed) {
        Event event = randomEvent(new Random(seed));

        EventResult result = Events.play(event, seed);

        long endMs = 0;
        for (int s = 0; s < event.squads().size(); s++) {
            Squad planned = event.squads().get(s);
            SquadResult played = result.squads().get(s);
            assertThat(played.startMs()).as("seed %d", seed).isGreaterThanOrEqualTo(Math.max(planned.startMs(), endMs));
            endMs = played.endMs();
            int games = event.rotations().get(s).games();
            assertThat(played.bowlers())
                    .as("seed %d", seed)
                    .hasSize(planned.groups().stream()
                            .mapToInt(group -> group.bowlers().size())
                            .sum());
            assertThat(played.bowlers()).as("seed %d", seed).allSatisfy(bowler -> {
                assertThat(bowler.scores()).hasSize(games);
                assertThat(bowler.scores())
                        .allSatisfy(score -> assertThat(score).isBetween(0, 300));
            });
        }
    }

    private static Event randomEvent(Random random) {
        int pairs = 1 + random.nextInt(3);
        int[] sizes = IntStream.range(0, 1 + random.nextInt(pairs))
                .map(g -> 1 + random.nextInt(3))
                .toArray();
        Rotation rotation = Events.random(sizes.length, pairs, 1 + random.nextInt(3), random);
        Squad[] squads = new Squad[1 + random.nextInt(3)];
        long startMs = Events.START_MS;
        for (int s = 0; s < squads.length; s++) {
            Conditioning conditioning = s == 0 ? Conditioning.STRIP_AND_OIL : any(random);
            squads[s] = Fixtures.squad(
                    String.valueOf((char) ('A' + s)),
                    startMs,
                    conditioning,
                    random.nextInt(3) * 2L * Events.MINUTE_MS,
                    Events.groups(sizes));
            startMs += random.nextInt(90) * Events.MINUTE_MS;
        }
        return Events.event(Events.centre(pairs, 1 + random.nextInt(3)), rotation, squads);
    }

    private static Conditioning any(Random random) {
        return List.of(Conditioning.values()).get(random.nextInt(3));
    }

    @Test
    void aLaneOnWhichNobodyPlaysStaysFreshToTheBit() {
        Event event = Events.event(Events.centre(2), Events.stay(1, 2, 2), Events.groups(3));

        WatchedSquad watched = WatchedSquad.play(event, 1);

        double[] fresh = OilFilm.fresh(Events.PATTERN, Events.PHYSICS.grid()).cellsUm();
        int changed = 0;
        for (LaneInPlay lane : watched.lanes.get(1).both()) {
            double[] cells = lane.film().cellsUm();
            assertThat(cells).containsExactly(fresh);
            changed += (int) IntStream.range(0, fresh.length)
                    .filter(cell -> cells[cell] != fresh[cell])
                    .count();
        }
        ReadmeRow.says("a lane nobody plays on: cells of its film that change", String.valueOf(changed));
        assertThat(watched.lanes.get(0).left().film().cellsUm()).isNotEqualTo(fresh);
    }

    @Test
    void anEventIsPlayedOnceByOneSimulation() {
        Event event = Events.onePair(1, Events.bowler("a"));
        TournamentSimulation simulation =
                new TournamentSimulation(Events.setup(event, new StartingLines(event, Events.PHYSICS), 1));
        simulation.play();

        assertThatIllegalStateException()
                .isThrownBy(simulation::play)
                .withMessage("event test has been played; make a new simulation");
    }
}
