package lanetide.squads.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.Stay;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused when an event is put together, and in which words. */
class RefusalsTest {
    private static final Catalogue CATALOGUE = Catalogue.shipped();
    private static final LaneMachines MACHINES = Fixtures.machines(1, 45_000, 45_000);
    private static final Centre CENTRE = centre(new LanePair(1, 2), new LanePair(3, 4));
    private static final Rotation ROTATION = new Ring(1, 1).plan(2, 2, 2);

    private static Centre centre(LanePair... pairs) {
        return new Centre(List.of(pairs), CATALOGUE.surfaces().get("hard-synthetic"), MACHINES, Map.of(), List.of());
    }

    private static Bowler bowler(String id) {
        return Fixtures.bowler(id, Hand.RIGHT, "tweener", Levels.shipped().get("league"), "urethane");
    }

    private static Group group(String id, String... bowlers) {
        return new Group(id, List.of(bowlers).stream().map(RefusalsTest::bowler).toList());
    }

    private static Squad squad(String id, long startMs, Conditioning conditioning, Group... groups) {
        return Fixtures.squad(id, startMs, conditioning, 0, List.of(groups));
    }

    private static Squad squad(String id, long startMs) {
        return squad(id, startMs, Conditioning.STRIP_AND_OIL, group("1", "a"), group("2", "b"));
    }

    private static Event event(List<Squad> squads, List<Rotation> rotations) {
        OilPattern pattern = OilPattern.of("p", 12, 24, 4);
        return Fixtures.event("event", CENTRE, pattern, squads, rotations, PaceOfPlay.USUAL);
    }

    private static void assertRefused(ThrowingCallable making, String message) {
        assertThatThrownBy(making).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 3", "4, 3", "5, 5"})
    void lanesThatDoNotAdjoinAreNoPair(int left, int right) {
        assertRefused(
                () -> new LanePair(left, right),
                "pair " + left + "-" + right + " is not two adjoining lanes, such as 7-8");
    }

    @Test
    void aPairIsNamedAsTheTradeWritesIt() {
        assertThat(new LanePair(7, 8).id()).isEqualTo("7-8");
    }

    @Test
    void aCentreNeedsAPairAndNoLaneInTwo() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> centre(new LanePair(1, 2), new LanePair(2, 3)))
                .withMessageContaining("no lane may stand in two of them");
        assertThatIllegalArgumentException()
                .isThrownBy(RefusalsTest::centre)
                .withMessageContaining("must be at least one pair");
    }

    @Test
    void aRotationLeavesSparePairsFree() {
        Event event = event(List.of(squad("A", 0)), List.of(ROTATION));

        assertRefused(
                () -> event.withSpare(List.of(new LanePair(3, 4))),
                "the rotation of squad A sends a group to pair 3-4, which is spare; leave it free");
    }

    @Test
    void machinesAreAtLeastOneAndTakeNoNegativeTime() {
        assertRefused(
                () -> Fixtures.machines(0, 1, 2),
                "lane machines: 0 that clean and oil, 0 cleaners and 0 oilers must be either at least 1 of the first kind"
                        + " or at least 1 of both others; times 1, 2 and 0 ms must be at least 0");
        assertThatIllegalArgumentException().isThrownBy(() -> new LaneMachines(1, 1, 0, 1, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new LaneMachines(0, 1, 0, 1, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new LaneMachines(1, 0, 0, 1, 1, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> Fixtures.machines(1, -1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Fixtures.machines(1, 0, -1));
    }

    @ParameterizedTest(name = "time {0} below zero")
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void noTimeOfPlayIsNegative(int which) {
        long[] ms = {1, 1, 1, 1, 1, 1};
        ms[which] = -1;

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PaceOfPlay(ms[0], ms[1], 0, ms[2], ms[3], ms[4], ms[5], LaneCourtesy.NONE))
                .withMessageStartingWith("pace of play: no time may be below 0 ms");
    }

    @ParameterizedTest
    @CsvSource({
        "-0.1, 1, 1, 1, 1, reading error (boards)",
        "5.1, 1, 1, 1, 1, reading error (boards)",
        "1, -0.1, 1, 1, 1, dead band (boards)",
        "1, 10.1, 1, 1, 1, dead band (boards)",
        "1, 1, -0.1, 1, 1, gain",
        "1, 1, 1.6, 1, 1, gain",
        "1, 1, 1, 0, 1, patience (shots)",
        "1, 1, 1, 51, 1, patience (shots)",
        "1, 1, 1, 1, -0.1, expected drift (boards a game)",
        "1, 1, 1, 1, 3.1, expected drift (boards a game)",
        "NaN, 1, 1, 1, 1, reading error (boards)"
    })
    void anAdaptationOutsideItsRangesIsRefused(
            double sees, double deadBand, double gain, int patience, double drift, String name) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Adaptation(sees, deadBand, gain, patience, Reckoning.byOwnBalls(drift)))
                .withMessageStartingWith(name + " is ")
                .withMessageContaining("it must lie between");
    }

    @Test
    void whatHasANameNeedsOne() {
        assertRefused(() -> bowler(" "), "bowler is blank; give it a name");
        assertRefused(() -> group("", "a"), "group is blank; give it a name");
        assertRefused(() -> squad("", 0), "squad is blank; give it a name");
        assertRefused(
                () -> new Level(
                        "", Levels.spread(1, 0, 0), new Adaptation(0, 0, 0, 1, Reckoning.byOwnBalls(0)), 0, "x"),
                "level is blank; give it a name");
    }

    @Test
    void aGroupWithoutBowlersIsRefused() {
        assertRefused(() -> group("7"), "group 7 has no bowler; leave the group out or add one");
    }

    @Test
    void aSquadNeedsGroupsAndNoNegativeTimes() {
        assertRefused(
                () -> Fixtures.squad("A", -1, Conditioning.NONE, 5, List.of()),
                "squad A: start -1 ms and practice 5 ms must be at least 0, groups 0 at least 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Fixtures.squad("A", 0, Conditioning.NONE, -1, List.of(group("1", "a"))));
    }

    @Test
    void aSoundEventIsTaken() {
        Event event = event(List.of(squad("A", 0), squad("B", 0)), List.of(ROTATION, ROTATION));

        assertThat(event.squads()).hasSize(2);
    }

    @Test
    void anEventNeedsSquadsAndARotationForEach() {
        assertRefused(() -> event(List.of(), List.of()), "an event needs squads, and a rotation for each: 0 and 0");
        assertRefused(
                () -> event(List.of(squad("A", 0)), List.of(ROTATION, ROTATION)),
                "an event needs squads, and a rotation for each: 1 and 2");
    }

    @Test
    void theFirstSquadMustFindOil() {
        Squad first = squad("A", 0, Conditioning.NONE, group("1", "a"), group("2", "b"));

        assertRefused(() -> event(List.of(first), List.of(ROTATION)), "the first squad, A, would find bare lanes");
    }

    @Test
    void squadsStandInOrderOfStart() {
        assertRefused(
                () -> event(List.of(squad("A", 5), squad("B", 4)), List.of(ROTATION, ROTATION)),
                "squad B starts before squad A; list squads in order of start");
    }

    @Test
    void twoSquadsOfOneNameWouldShareTheirLuck() {
        assertRefused(
                () -> event(List.of(squad("A", 0), squad("A", 1)), List.of(ROTATION, ROTATION)),
                "squad A appears twice in the event");
    }

    @Test
    void groupsAndBowlersHaveNamesOfTheirOwnInASquad() {
        Squad groups = squad("A", 0, Conditioning.OIL_OVER, group("1", "a"), group("1", "b"));
        Squad bowlers = squad("A", 0, Conditioning.OIL_OVER, group("1", "a"), group("2", "a"));

        assertRefused(() -> event(List.of(groups), List.of(ROTATION)), "group 1 appears twice in squad A");
        assertRefused(() -> event(List.of(bowlers), List.of(ROTATION)), "bowler a appears twice in squad A");
    }

    @Test
    void aRotationFitsItsSquadAndTheCentre() {
        assertRefused(
                () -> event(List.of(squad("A", 0)), List.of(new Stay().plan(1, 2, 3))),
                "squad A has 2 groups on 2 pairs, its rotation 1 on 2");
        assertRefused(
                () -> event(List.of(squad("A", 0)), List.of(new Stay().plan(2, 3, 3))),
                "squad A has 2 groups on 2 pairs, its rotation 2 on 3");
    }

    @Test
    void aRotationThatSendsTwoGroupsToOnePairIsRefused() {
        Rotation collision = new Explicit(List.of(List.of(0, 1), List.of(1, 1))).plan(2, 2, 2);

        assertRefused(
                () -> event(List.of(squad("A", 0)), List.of(collision)),
                "the rotation of squad A sends 2 groups to pair 2 in game 2; send one");
    }

    @Test
    void whatIsArrangedForASquadFitsIt() {
        Group group = group("1", "a", "b");
        List<LineUpChange> ofNobody = List.of(new LineUpChange.Absence("c", 1));
        List<LineUpChange> twice = List.of(new LineUpChange.Absence("a", 1), new LineUpChange.LateArrival("a", 5));

        assertRefused(
                () -> arranged(group, ofNobody, OptionalInt.empty()),
                "squad A has no bowler c, whose place is to change; correct the name");
        assertRefused(
                () -> new Arrangements(List.of(), twice, OptionalInt.empty()),
                "a bowler has two changes of the line-up; give him one");
        assertRefused(
                () -> new Arrangements(List.of(), List.of(), OptionalInt.of(0)),
                "machines is 0, but must be at least 1");
        assertThatIllegalArgumentException().isThrownBy(() -> new LineUpChange.Absence("a", 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new LineUpChange.LateArrival("a", -1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Break(0, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Break(1, 0, 0));
    }

    private static Squad arranged(Group group, List<LineUpChange> changes, OptionalInt machines) {
        return Fixtures.squad("A", 0, Conditioning.OIL_OVER, 0, List.of(group, group("2", "x")))
                .withArrangements(new Arrangements(List.of(), changes, machines));
    }

    @Test
    void anEventLaysPatternsOnItsOwnLanesAndHasARotationForEverySquad() {
        Event event = event(List.of(squad("A", 0)), List.of(ROTATION));
        OilPattern other = OilPattern.of("other", 11, 20, 3);
        LanePatterns patterns = new LanePatterns(event.pattern(), Map.of(99, other));

        assertRefused(
                () -> event.withSquads(event.squads(), List.of(new SquadPlan(ROTATION, patterns))),
                "squad A has a pattern for lane 99, which is not among the centre's lanes");
        assertRefused(
                () -> event.withRotations(List.of(ROTATION, ROTATION)), "rotations (2) must be as many as squads (1)");
        assertThat(new LanePatterns(other, Map.of(1, other))).isEqualTo(LanePatterns.everywhere(other));
    }

    @Test
    void anEventHasMachinesForItsSquadsAndBowlersForTheirLastGame() {
        Group group = group("1", "a");
        List<LineUpChange> all = List.of(new LineUpChange.Absence("a", 1), new LineUpChange.Absence("x", 2));

        assertRefused(
                () -> event(List.of(arranged(group, List.of(), OptionalInt.of(3))), List.of(ROTATION)),
                "squad A has 3 lanes worked on at once, but there are only 1 machines");
        assertRefused(
                () -> event(List.of(arranged(group, all, OptionalInt.empty())), List.of(ROTATION)),
                "squad A has nobody left for its last game; leave one bowler in");
    }

    @Test
    void incidentsStandOnLanesThatAreThereAndTakeNoNegativeTime() {
        Event event = event(List.of(squad("A", 0)), List.of(ROTATION));
        Incidents elsewhere =
                new Incidents(Stops.NEVER, Stops.NEVER, List.of(new PlannedFault(9, 0, 1)), 1, FaultResponse.WAIT, 0);

        assertRefused(
                () -> event.withIncidents(elsewhere),
                "a fault is planned on lane 9, which is not among the centre's lanes");
        assertThatIllegalArgumentException().isThrownBy(() -> new Stops(0.5, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Stops(10, -1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new PlannedFault(1, -1, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Incidents(Stops.NEVER, Stops.NEVER, List.of(), 0, FaultResponse.WAIT, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new LaneCourtesy(3, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Fixtures.withSpread(PaceOfPlay.USUAL, 1.1));
    }

    @Test
    void listsAreCopied() {
        List<Bowler> bowlers = new ArrayList<>(List.of(bowler("a")));
        Group group = new Group("1", bowlers);

        bowlers.clear();

        assertThat(group.bowlers()).hasSize(1);
    }

    /**
     * O'Keefe, US Bowler, July 2012: ranges of ten shots of 2, 3, 4 and 4.5 boards; 3.078 is the mean range of ten
     * normals.
     */
    @ParameterizedTest
    @CsvSource({"elite, 2", "scratch, 3", "league, 4", "casual, 4.5"})
    void theShippedLevelsScatterAtTheArrowsAsPublished(String id, double rangeBoards) {
        var spread = Levels.shipped().get(id).spread();
        double arrowsM = Math.hypot(spread.laydownM(), spread.launchRad() * 15 * 0.3048);

        assertThat(arrowsM / (41.5 * 0.0254 / 39))
                .isCloseTo(rangeBoards / 3.078, org.assertj.core.api.Assertions.within(0.005));
    }
}
