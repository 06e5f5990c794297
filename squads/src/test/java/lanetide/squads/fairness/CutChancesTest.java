package lanetide.squads.fairness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.model.TieRule;
import lanetide.squads.qualifying.CutChances;
import lanetide.squads.qualifying.CutPlayed;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PossibleEvents;
import org.junit.jupiter.api.Test;

class CutChancesTest {
    private static final FairnessPlan STILL = new FairnessPlan(3, 60, 2, false);
    private static final FairnessPlan PLAYED = new FairnessPlan(3, 60, 2, true);

    private static Cut best(int places) {
        return new Cut(OptionalInt.of(places), OptionalDouble.empty(), TieRule.LOT, true, Counting.BEST);
    }

    private static Event withCut(List<Group> groups, int places) {
        return SmallEvents.twoSquads(groups, 2, Conditioning.NONE).withCut(Optional.of(best(places)));
    }

    /** Who sits first in the first group of squad A bowls in squad B again, in place of the first one there. */
    private static Event withReentry(Event event) {
        List<Squad> squads = event.squads().stream()
                .map(squad -> squad.withGroups(squad.groups().stream()
                        .map(group -> group.id().equals("1") ? again(group) : group)
                        .toList()))
                .toList();
        return event.withSquads(squads);
    }

    private static Group again(Group group) {
        List<Bowler> bowlers = new ArrayList<>(group.bowlers());
        bowlers.set(0, bowlers.get(0).ofPerson("Quill"));
        return new Group(group.id(), bowlers);
    }

    private static CutChances chances(Event event, FairnessPlan plan, int sets) {
        return FairnessStudy.run(new PossibleEvents(event, sets), plan, Execution.on(2), done -> {})
                .cut()
                .orElseThrow();
    }

    private static double sum(CutChances found) {
        double once = found.levels().stream()
                .filter(level -> level.level().isPresent() || found.levels().size() == 1)
                .mapToDouble(level -> level.people() * level.chance().value())
                .sum();
        return once
                + found.again()
                        .map(again -> again.people() * again.chance().value())
                        .orElse(0.0);
    }

    @Test
    void onLanesThatNeverChangeASquadIsWorthNothingAtTheCutToTheLastDigit() {
        CutChances found = chances(withCut(SmallEvents.mixed(3, 3), 5), STILL, 5);

        assertThat(found.levels())
                .hasSize(4)
                .allSatisfy(level -> assertThat(level.squads()).hasSize(2).allSatisfy(squad -> {
                    assertThat(squad.more().value()).isEqualTo(0.0);
                    assertThat(squad.more().ci90().low()).isEqualTo(0.0);
                    assertThat(squad.more().ci90().high()).isEqualTo(0.0);
                }));
        assertThat(found.levels().get(0).level()).isEmpty();
        assertThat(found.levels().get(1).level()).contains("elite");
        assertThat(found.levels().get(1).chance().value())
                .isGreaterThan(found.levels().get(3).chance().value());
    }

    @Test
    void onLanesThatNeverChangeIdenticalBowlersHaveTheSameChanceInEverySquad() {
        CutChances found = chances(withCut(SmallEvents.alike(3, 3), 6), STILL, 1);

        assertThat(found.levels()).hasSize(1);
        assertThat(found.levels().get(0).chance().value()).isCloseTo(6.0 / 18, within(1e-12));
        assertThat(found.levels().get(0).squads())
                .allSatisfy(squad -> assertThat(squad.more().value()).isEqualTo(0.0));
    }

    @Test
    void theChancesAddUpToThePlaces() {
        for (int places : new int[] {1, 5, 17}) {
            CutChances found = chances(withCut(SmallEvents.mixed(3, 3), places), PLAYED, 5);
            assertThat(found.people()).isEqualTo(18);
            assertThat(found.places()).isEqualTo(places);
            assertThat(found.goingOn()).isEqualTo(places);
            assertThat(sum(found)).isCloseTo(places, within(1e-12 * places));
        }
    }

    @Test
    void onWornLanesALateSquadCostsSomethingAndTheSquadsCancel() {
        CutChances found = chances(withCut(SmallEvents.mixed(3, 3), 5), PLAYED, 5);

        for (CutChances.OfLevel level : found.levels()) {
            double a = level.squads().get(0).more().value();
            assertThat(a).isNotZero();
            assertThat(level.squads().get(1).more().value()).isCloseTo(-a, within(1e-12));
            assertThat(level.squads().get(0).more().ci90().low()).isLessThan(a);
        }
        assertThat(found.score().value()).isBetween(300.0, 600.0);
        assertThat(found.score().ci90().low()).isLessThan(found.score().value());
    }

    /** A squad in which everybody scores more by formula is better by what a hand count of the cut says. */
    @Test
    void aSquadThatScoresFarMoreSendsEverybodyOn() {
        Event event = withCut(SmallEvents.alike(3, 3), 9);
        SeatingRounds rounds = new SeatingRounds(new PossibleEvents(event, 1), PLAYED);
        List<CutPlayed> playings = IntStream.range(0, rounds.playings())
                .mapToObj(number -> rounds.bowlerAtSeat(rounds.playing(number)))
                .map(seated -> {
                    double[] chance = new double[18];
                    for (int seat = 0; seat < 9; seat++) {
                        chance[seated[seat]] = 1;
                    }
                    return new CutPlayed(chance, chance, 9, 400);
                })
                .toList();

        CutChances found = new CutEstimates(event, rounds, playings).chances();

        CutChances.OfLevel all = found.levels().get(0);
        assertThat(all.chance().value()).isEqualTo(0.5);
        assertThat(all.squads().get(0).more().value()).isCloseTo(0.5, within(1e-9));
        assertThat(all.squads().get(1).more().value()).isCloseTo(-0.5, within(1e-9));
        assertThat(found.score().value()).isEqualTo(400);
    }

    @Test
    void aPersonEnteredTwiceIsOnePersonWithABetterChance() {
        Event event = withReentry(withCut(SmallEvents.alike(3, 3), 5));
        CutChances found = chances(event, PLAYED, 5);

        assertThat(found.people()).isEqualTo(17);
        assertThat(found.levels().get(0).people()).isEqualTo(16);
        CutChances.Again again = found.again().orElseThrow();
        assertThat(again.people()).isEqualTo(1);
        assertThat(again.worth().value()).isPositive();
        assertThat(again.chance().value()).isGreaterThan(again.worth().value());
        assertThat(sum(found)).isCloseTo(5, within(1e-12));
    }

    @Test
    void nobodySitsTwiceInOneSquad() {
        int[] squads = IntStream.range(0, 20).map(seat -> seat / 5).toArray();
        // Person 0 is entered in every squad, person 1 in two.
        int[] personOf = IntStream.range(0, 20)
                .map(bowler -> bowler % 5 == 0 ? 0 : bowler == 1 || bowler == 6 ? 1 : bowler)
                .toArray();

        for (int round = 0; round < 50; round++) {
            int[][] seatings =
                    new Seatings(squads, personOf, 4, new RandomStreams(1).forReplication(round)).bowlerAtSeat();
            for (int[] seated : seatings) {
                assertThat(seated)
                        .containsExactlyInAnyOrder(IntStream.range(0, 20).toArray());
                for (int squad = 0; squad < 4; squad++) {
                    int of = squad;
                    assertThat(IntStream.range(0, 20)
                                    .filter(seat -> squads[seat] == of)
                                    .map(seat -> personOf[seated[seat]])
                                    .toArray())
                            .doesNotHaveDuplicates();
                }
            }
        }
    }

    @Test
    void theAnswerDoesNotDependOnTheNumberOfThreads() {
        Event event = withReentry(withCut(SmallEvents.mixed(3, 3), 5));
        FairnessPlan few = PLAYED.playing(24);
        assertThat(FairnessStudy.run(event, few, 1, done -> {}).cut())
                .isEqualTo(FairnessStudy.run(event, few, 3, done -> {}).cut());
    }
}
