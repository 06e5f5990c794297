package lanetide.squads.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.change.RotationRepair.Priority;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Break;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.FaultResponse;
import lanetide.squads.model.Group;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Levels;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.model.Stops;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.StudyResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LateChangesTest {
    private static final long HOUR_MS = 3_600_000;

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @Test
    void groupsOnALostPairGoToFreePairsAndNobodyElseIsTroubled() {
        Event event = event(new Ring(1, 1).plan(10, 12, 8), 2, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4);

        Change change = PairLoss.of(event, Set.of(4, 5), 0, 0, Priority.FEW_CHANGES);

        assertThat(change.moved()).isEmpty();
        assertThat(change.dissolved()).isEmpty();
        assertThat(change.visits())
                .as("every planned visit of the two pairs, in both squads")
                .hasSize(2
                        * IntStream.range(0, 8)
                                .map(game -> (int) IntStream.range(0, 10)
                                        .filter(group -> Set.of(4, 5)
                                                .contains(
                                                        event.rotations().get(0).pairOf(game, group)))
                                        .count())
                                .sum());
        assertNobodyOn(change.event(), Set.of(4, 5));
        assertThat(RotationReport.of(change.event().rotations().get(0)).isPermutation())
                .isTrue();
    }

    @Test
    void whatCanGoWrongStaysAsItIsInAChangedEvent() {
        Incidents incidents =
                new Incidents(new Stops(60, 60_000, 0.5), Stops.NEVER, List.of(), 1, FaultResponse.SPLIT, 600_000);
        Event event = event(new Ring(1, 1).plan(2, 3, 3), 1, 3, 3).withIncidents(incidents);

        assertThat(PairLoss.of(event, Set.of(0), 0, 0, Priority.FEW_CHANGES)
                        .event()
                        .incidents())
                .isEqualTo(incidents);
        assertThat(NoShows.of(event, 0, Set.of("0-1-1")).event().incidents()).isEqualTo(incidents);
    }

    @Test
    void whatIsArrangedForASquadStaysButForBowlersWhoAreNotThere() {
        Break rest = new Break(1, 0, 300_000);
        LineUpChange stays = new LineUpChange.Absence("0-2-1", 2);
        LineUpChange goes = new LineUpChange.Absence("0-1-1", 2);
        Event event = arranged(
                event(new Ring(1, 1).plan(2, 3, 3), 1, 3, 3),
                new Arrangements(List.of(rest), List.of(stays, goes), OptionalInt.of(1)));
        Squad arranged = event.squads().get(0);

        assertThat(NoShows.of(event, 0, Set.of("0-1-1")).event().squads().get(0).arrangements())
                .isEqualTo(new Arrangements(List.of(rest), List.of(stays), OptionalInt.of(1)));
        assertThat(PairLoss.of(event, Set.of(0), 0, 0, Priority.FEW_CHANGES)
                        .event()
                        .squads()
                        .get(0)
                        .arrangements())
                .isEqualTo(arranged.arrangements());
        assertThat(LateStart.of(event, 0, HOUR_MS, (early, before) -> 0)
                        .event()
                        .squads()
                        .get(0))
                .isEqualTo(arranged.startingAt(arranged.startMs() + HOUR_MS));
    }

    @Test
    void aSparePairThatIsLostOrThatAGroupNeedsIsSpareNoLonger() {
        List<LanePair> spare = List.of(new LanePair(3, 4), new LanePair(9, 10), new LanePair(11, 12));
        Rotation stay = new Stay().plan(3, 3, 1).among(List.of(0, 2, 3), 6);
        Event event = event(stay, 2, 3, 3, 3).withSpare(spare);

        Change change = PairLoss.of(event, Set.of(0, 4), 1, 0, Priority.FEW_CHANGES);

        assertThat(change.visits()).containsExactly(new Change.Visit("S1", "1", 0, 0, 1));
        assertThat(change.event().centre().spare()).containsExactly(new LanePair(11, 12));
    }

    @Test
    void aFullHouseDissolvesTheSmallestGroupAndEvensOut() {
        Event event = event(new Ring(1, 1).plan(4, 4, 3), 1, 5, 5, 4, 5);

        Change change = PairLoss.of(event, Set.of(0), 0, 0, Priority.FEW_CHANGES);

        assertThat(change.dissolved()).containsExactly(new Change.Dissolved("S0", "3"));
        assertThat(change.moved()).hasSize(4).allMatch(mover -> mover.from().equals("3"));
        assertThat(sizes(change.event().squads().get(0))).containsExactlyInAnyOrder(7, 6, 6);
        assertNobodyOn(change.event(), Set.of(0));
    }

    @Test
    void aLossBetweenTwoGamesThatNeedsRegroupingSplitsTheSquad() {
        Event event = event(new Ring(1, 1).plan(3, 3, 4), 2, 2, 2, 2);

        Change change = PairLoss.of(event, Set.of(2), 0, 1, Priority.FEW_CHANGES);

        assertThat(change.event().squads()).extracting(Squad::id).containsExactly("S0", "S0 (2)", "S1");
        assertThat(change.event().squads().get(1).conditioning()).isEqualTo(Conditioning.NONE);
        assertThat(change.event().squads().get(1).practiceMs()).isZero();
        assertThat(change.event().rotations()).extracting(Rotation::games).containsExactly(1, 3, 4);
        assertThat(change.event().rotations().get(0).pairOf(0, 2)).isEqualTo(2);
        assertNobodyOn(
                event.withSquads(
                        change.event().squads().subList(1, 2).stream()
                                .map(squad -> squad.withConditioning(Conditioning.STRIP_AND_OIL))
                                .toList(),
                        change.event().plans().subList(1, 2)),
                Set.of(2));
    }

    @Test
    void theSecondPartOfASquadKeepsWhatIsLeftOfItsArrangements() {
        Bowler guest =
                Fixtures.bowler("guest", Hand.LEFT, "power", Levels.shipped().get("league"), "urethane");
        Break early = new Break(1, 0, 60_000);
        Break atTheCut = new Break(2, 0, 120_000);
        Break later = new Break(4, 0, 180_000);
        Break lunch = new Break(1, 12 * HOUR_MS, 240_000);
        LineUpChange gone = new LineUpChange.Absence("0-1-1", 1);
        LineUpChange goes = new LineUpChange.Absence("0-1-2", 4);
        LineUpChange late = new LineUpChange.LateArrival("0-2-1", 9 * HOUR_MS);
        Event event = arranged(
                event(new Ring(1, 1).plan(3, 3, 6), 1, 2, 2, 2),
                new Arrangements(
                        List.of(early, atTheCut, later, lunch),
                        List.of(gone, goes, late, new LineUpChange.Substitution("0-3-1", 2, guest)),
                        OptionalInt.of(1)));

        List<Squad> parts = PairLoss.of(event, Set.of(2), 0, 2, Priority.FEW_CHANGES)
                .event()
                .squads();

        assertThat(parts.get(0).arrangements())
                .isEqualTo(new Arrangements(
                        List.of(early),
                        List.of(gone, late, new LineUpChange.Substitution("0-3-1", 2, guest)),
                        OptionalInt.of(1)));
        assertThat(parts.get(1).arrangements())
                .isEqualTo(new Arrangements(
                        List.of(new Break(1, 0, 120_000), new Break(2, 0, 180_000), lunch),
                        List.of(
                                gone,
                                new LineUpChange.Absence("0-1-2", 2),
                                late,
                                new LineUpChange.Substitution("0-3-1", 1, guest)),
                        OptionalInt.of(1)));
    }

    @Test
    void whoIsAbsentDoesNotBowlInTheSecondPartOfASquadEither() {
        Event event = arranged(
                event(new Ring(1, 1).plan(3, 3, 3), 1, 2, 2, 2),
                new Arrangements(List.of(), List.of(new LineUpChange.Absence("0-1-1", 1)), OptionalInt.empty()));

        Event changed =
                PairLoss.of(event, Set.of(2), 0, 1, Priority.FEW_CHANGES).event();
        StudyResult played = EventStudy.run(changed, 1, 1, 1, done -> {});

        assertThat(played.first().squads())
                .hasSize(2)
                .allSatisfy(part -> assertThat(part.bowlers())
                        .extracting(bowler -> bowler.bowler().id())
                        .containsExactlyInAnyOrder("0-1-2", "0-2-1", "0-2-2", "0-3-1", "0-3-2"));
    }

    private static Event arranged(Event event, Arrangements arrangements) {
        return event.withSquads(List.of(event.squads().get(0).withArrangements(arrangements)));
    }

    @Test
    void bowlersWhoDoNotFitAreRefusedWithTheNumberOfPairsTheyNeed() {
        Event event = event(new Ring(1, 1).plan(2, 2, 2), 1, 8, 8);

        assertThatThrownBy(() -> PairLoss.of(event, Set.of(1), 0, 0, Priority.FEW_CHANGES))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageContaining("at least 2 for its 16 bowlers, with at most 10 on a pair");
        assertThatThrownBy(() -> PairLoss.of(event, Set.of(1), 0, 2, Priority.FEW_CHANGES))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageContaining("first game without the pairs (3)");
    }

    /** Nobody less can move: every group above its new size must give, and no group at or below it does. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noShowsMoveAsFewBowlersAsEveningOutNeeds(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] sizes = random.ints(6, 2, 7).toArray();
        Event event = event(new Ring(1, 1).plan(6, 6, 4), 1, sizes);
        int bowlers = Arrays.stream(sizes).sum();
        Set<String> absent = NoShows.drawn(event.squads().get(0), 1 + random.nextInt(bowlers - 6), seed);

        Change change = NoShows.of(event, 0, absent);

        Squad now = change.event().squads().get(0);
        IntSummaryStatistics range =
                sizes(now).stream().mapToInt(Integer::intValue).summaryStatistics();
        assertThat(range.getMax() - range.getMin()).isLessThanOrEqualTo(1);
        assertThat(names(now))
                .hasSize(bowlers - absent.size())
                .doesNotHaveDuplicates()
                .doesNotContainAnyElementsOf(absent);
        assertThat(change.absent()).hasSize(absent.size());
        assertThat(change.visits()).isEmpty();
        assertThat(change.event().rotations()).isEqualTo(event.rotations());
        assertThat(change.moved().size()).isEqualTo(fewestMoves(event, absent));
    }

    private static int fewestMoves(Event event, Set<String> absent) {
        List<Integer> there = event.squads().get(0).groups().stream()
                .map(group -> (int) group.bowlers().stream()
                        .filter(bowler -> !absent.contains(bowler.id()))
                        .count())
                .toList();
        int all = there.stream().mapToInt(Integer::intValue).sum();
        int fewest = Integer.MAX_VALUE;
        for (int larger = 0; larger < 1 << there.size(); larger++) {
            if (Integer.bitCount(larger) == all % there.size()) {
                int chosen = larger;
                fewest = Math.min(
                        fewest,
                        IntStream.range(0, there.size())
                                .map(group ->
                                        Math.max(0, there.get(group) - all / there.size() - (chosen >> group & 1)))
                                .sum());
            }
        }
        return fewest;
    }

    @Test
    void fewerBowlersThanGroupsDissolveGroups() {
        Event event = event(new Ring(1, 1).plan(4, 4, 3), 1, 1, 2, 1, 1);

        Change change = NoShows.of(event, 0, Set.of("0-1-1", "0-4-1"));

        assertThat(change.dissolved()).hasSize(1);
        assertThat(sizes(change.event().squads().get(0))).containsExactly(1, 1, 1);
        assertThat(change.event().rotations().get(0).groups()).isEqualTo(3);
    }

    @Test
    void aSquadOfWhichNobodyComesOrAnUnknownBowlerIsRefused() {
        Event event = event(new Ring(1, 1).plan(2, 2, 2), 1, 1, 1);

        assertThatThrownBy(() -> NoShows.of(event, 0, Set.of("0-1-1", "0-2-1")))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageContaining("bowlers left in squad S0 (0)");
        assertThatThrownBy(() -> NoShows.of(event, 0, Set.of("Nobody")))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageContaining("absent bowler (Nobody)");
        assertThatThrownBy(() -> NoShows.drawn(event.squads().get(0), 2, 1))
                .isInstanceOf(ImpossibleRotationException.class);
        assertThat(NoShows.drawn(event.squads().get(0), 1, 1))
                .isEqualTo(NoShows.drawn(event.squads().get(0), 1, 1));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 3})
    void aLateSquadPushesOnlyThoseThatMustWait(long hours) {
        Event event = event(new Ring(1, 1).plan(2, 2, 2), 3, 2, 2);

        Change change = LateStart.of(
                event,
                1,
                hours * HOUR_MS,
                (now, squad) -> now.squads().get(squad - 1).startMs() + 4 * HOUR_MS);

        assertThat(change.event().squads().get(0)).isEqualTo(event.squads().get(0));
        assertThat(change.starts().get(0)).isEqualTo(new Change.Start("S1", 14 * HOUR_MS, (14 + hours) * HOUR_MS));
        assertThat(change.starts()).hasSize(hours == 1 ? 1 : 2);
        assertThat(change.event().squads().get(2).startMs()).isEqualTo(Math.max(20, 18 + hours) * HOUR_MS);
        assertThatThrownBy(() -> LateStart.of(event, 1, 0, (early, before) -> 0))
                .isInstanceOf(ImpossibleRotationException.class);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whateverIsLostTheChangedEventCanBePlayed(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int pairs = 2 + random.nextInt(8);
        int groups = 1 + random.nextInt(pairs);
        int games = 1 + random.nextInt(6);
        Event event = event(
                new lanetide.squads.rotation.design.Shuffled(seed).plan(groups, pairs, games),
                2,
                random.ints(groups, 1, 4).toArray());
        Set<Integer> lost = new TreeSet<>();
        int losses = 1 + random.nextInt((pairs + 1) / 2);
        while (lost.size() < losses) {
            lost.add(random.nextInt(pairs));
        }

        Change change = PairLoss.of(event, lost, random.nextInt(2), random.nextInt(games), Priority.FEW_CHANGES);

        assertThat(change.event().squads().stream()
                        .flatMap(squad -> names(squad).stream())
                        .collect(Collectors.toSet()))
                .hasSize(2 * names(event.squads().get(0)).size());
        change.event()
                .rotations()
                .forEach(rotation ->
                        assertThat(RotationReport.of(rotation).isPermutation()).isTrue());
    }

    private static void assertNobodyOn(Event event, Set<Integer> lost) {
        for (Rotation rotation : event.rotations()) {
            for (int game = 0; game < rotation.games(); game++) {
                for (int pair : lost) {
                    assertThat(rotation.groupsOn(game, pair)).isEmpty();
                }
            }
        }
    }

    private static List<Integer> sizes(Squad squad) {
        return squad.groups().stream().map(group -> group.bowlers().size()).toList();
    }

    private static List<String> names(Squad squad) {
        return squad.groups().stream()
                .flatMap(group -> group.bowlers().stream())
                .map(Bowler::id)
                .toList();
    }

    /** Partners of a number, in the order of the groups' bowlers. */
    private static Event inTeams(Event event, int size) {
        return event.withSquads(event.squads().stream()
                .map(squad -> squad.withGroups(squad.groups().stream()
                        .map(group -> new Group(
                                group.id(),
                                IntStream.range(0, group.size())
                                        .mapToObj(i -> group.bowlers()
                                                .get(i)
                                                .with(Optional.of(squad.id() + "/" + group.id() + "/" + i / size)))
                                        .toList()))
                        .toList()))
                .toList());
    }

    private static void assertTogether(Squad squad) {
        Map<String, Set<String>> groupsOf = new TreeMap<>();
        squad.groups()
                .forEach(group -> group.bowlers()
                        .forEach(bowler -> groupsOf.computeIfAbsent(
                                        bowler.partners().orElseThrow(), name -> new TreeSet<>())
                                .add(group.id())));
        assertThat(groupsOf.values()).allSatisfy(groups -> assertThat(groups).hasSize(1));
    }

    @Test
    void partnersOfADissolvedGroupGoTogetherToTheEmptiestGroups() {
        Event event = inTeams(event(new Ring(1, 1).plan(5, 5, 3), 1, 4, 4, 4, 4, 4), 2);

        Change change = PairLoss.of(event, Set.of(0), 0, 0, Priority.FEW_CHANGES);

        Squad squad = change.event().squads().get(0);
        assertTogether(squad);
        assertThat(change.parted()).isEmpty();
        assertThat(sizes(squad)).containsExactlyInAnyOrder(6, 6, 4, 4);
        assertThat(change.moved()).hasSize(4);
        assertThat(squad.everybody()).hasSize(20);
    }

    /** Three pairs hold thirty bowlers, but of ten trios only nine whole ones. */
    @Test
    void onlyPartnersForWhomNoGroupHasRoomAreParted() {
        Event event = inTeams(event(new Ring(1, 1).plan(5, 5, 3), 1, 6, 6, 6, 6, 6), 3);

        Change change = PairLoss.of(event, Set.of(0, 1), 0, 0, Priority.FEW_CHANGES);

        assertThat(change.parted()).hasSize(1);
        assertThat(sizes(change.event().squads().get(0))).containsExactly(10, 10, 10);
    }

    @Test
    void whoIsLeftOfATeamStaysTogetherAndNobodyMovesForOneBowler() {
        Event event = inTeams(event(new Ring(1, 1).plan(4, 4, 3), 1, 4, 4, 4, 4), 2);

        Change one = NoShows.of(event, 0, Set.of("0-1-1"));
        assertThat(one.moved()).isEmpty();
        assertThat(sizes(one.event().squads().get(0))).containsExactly(3, 4, 4, 4);

        Change group = NoShows.of(event, 0, Set.of("0-1-1", "0-1-2", "0-1-3", "0-1-4"));
        assertTogether(group.event().squads().get(0));
        assertThat(sizes(group.event().squads().get(0))).containsExactly(2, 4, 4, 2);
        assertThat(group.moved()).hasSize(2);
    }

    @Test
    void whereThereAreFewerTeamsThanGroupsAGroupIsDissolvedAndNoTeam() {
        Event event = inTeams(event(new Ring(1, 1).plan(3, 3, 3), 1, 5, 5, 5), 5);

        Change change = NoShows.of(event, 0, Set.of("0-1-1", "0-1-2", "0-1-3", "0-1-4", "0-1-5"));

        assertThat(sizes(change.event().squads().get(0))).containsExactly(5, 5);
        assertThat(change.dissolved()).containsExactly(new Change.Dissolved("S0", "1"));
        assertThat(change.moved()).isEmpty();
    }

    /** Squads S0, S1, ... at 8, 14, 20 o'clock of groups 1, 2, ... of bowlers such as 0-1-1. */
    private static Event event(Rotation rotation, int squads, int... sizes) {
        Centre centre = Fixtures.centre(rotation.pairs(), Fixtures.machines(1, 45_000, 45_000));
        List<Squad> all = new ArrayList<>();
        for (int squad = 0; squad < squads; squad++) {
            all.add(Fixtures.squad(
                    "S" + squad, (8 + 6 * squad) * HOUR_MS, Conditioning.STRIP_AND_OIL, 600_000, groups(squad, sizes)));
        }
        return Fixtures.event(
                "test",
                centre,
                OilPattern.of("p", 12, 24, 4),
                all,
                java.util.Collections.nCopies(squads, rotation),
                PaceOfPlay.USUAL);
    }

    private static List<Group> groups(int squad, int... sizes) {
        List<Group> groups = new ArrayList<>();
        for (int group = 0; group < sizes.length; group++) {
            List<Bowler> bowlers = new ArrayList<>();
            for (int bowler = 0; bowler < sizes[group]; bowler++) {
                bowlers.add(Fixtures.bowler(
                        squad + "-" + (group + 1) + "-" + (bowler + 1),
                        Hand.RIGHT,
                        "tweener",
                        Levels.shipped().get("league"),
                        "urethane"));
            }
            groups.add(new Group(String.valueOf(group + 1), bowlers));
        }
        return groups;
    }
}
