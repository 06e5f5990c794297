package lanetide.squads.fairness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import lanetide.squads.change.PairLoss;
import lanetide.squads.change.RotationRepair;
import lanetide.squads.machines.OilingCost;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Break;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.PlannedFault;
import lanetide.squads.model.Squad;
import lanetide.squads.model.Stops;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PossibleEvents;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private static final long MINUTE_MS = 60_000;
    private static final RemedyChange FRESH_OIL = RemedyChange.oiling(Conditioning.STRIP_AND_OIL);
    private static final Event PLAN = SmallEvents.twoSquads(SmallEvents.mixed(2, 3), 2, Conditioning.OIL_OVER);
    private static final Event FRESH = SmallEvents.twoSquads(SmallEvents.mixed(2, 3), 2, Conditioning.STRIP_AND_OIL);

    @Test
    void anEventDiffersFromItselfInNothing() {
        assertThat(EventComparison.run(PLAN, PLAN, 1, 3, 2, done -> {}))
                .hasSizeGreaterThan(6)
                .allSatisfy(difference -> {
                    assertThat(difference.difference()).isEqualTo(0.0);
                    assertThat(difference.isReal()).isFalse();
                });
    }

    @Test
    void whatALaneMachineDoesMoreIsFoundAndCalledReal() {
        List<Difference> differences = EventComparison.run(PLAN, FRESH, 1, 4, 2, done -> {});

        // 26 mL on four lanes, twice, either way.
        assertThat(differences)
                .filteredOn(difference -> difference.compared() == Compared.OIL_LAID)
                .singleElement()
                .satisfies(difference -> {
                    assertThat(difference.a()).isEqualTo(208.0);
                    assertThat(difference.isReal()).isFalse();
                });
        assertThat(differences)
                .filteredOn(difference -> difference.compared() == Compared.OIL_LEFT)
                .singleElement()
                .satisfies(difference -> {
                    assertThat(difference.difference()).isNegative();
                    assertThat(difference.ci95().high()).isNegative();
                    assertThat(difference.isReal()).isTrue();
                });
        assertThat(differences)
                .filteredOn(difference ->
                        difference.squad().equals(Optional.of("A")) && difference.compared() == Compared.SQUAD_SCORE)
                .singleElement()
                .satisfies(difference -> assertThat(difference.difference()).isEqualTo(0.0));
    }

    @Test
    void aBreakOfAnHourIsFoundInTheEndsOfTheSquads() {
        List<Difference> differences = EventComparison.run(PLAN, withBreaks(PLAN, 60 * MINUTE_MS), 1, 3, 2, done -> {});

        assertThat(List.of("A", "B"))
                .allSatisfy(end -> assertThat(found(differences, Compared.SQUAD_END, end))
                        .satisfies(difference -> {
                            assertThat(difference.difference()).isCloseTo(60, within(3.0));
                            assertThat(difference.isReal()).isTrue();
                        }));
    }

    @Test
    void aSquadThatStartsAnHourLaterIsDoneAnHourLater() {
        Squad first = PLAN.squads().get(0);
        Event later = PLAN.withSquads(List.of(
                first.startingAt(first.startMs() + 60 * MINUTE_MS),
                PLAN.squads().get(1)));

        List<Difference> differences = EventComparison.run(PLAN, later, 1, 3, 2, done -> {});

        assertThat(found(differences, Compared.SQUAD_END, "A").difference()).isEqualTo(60);
        assertThat(found(differences, Compared.SQUAD_END, "A").isReal()).isTrue();
        assertThat(found(differences, Compared.SQUAD_END, "B").difference()).isEqualTo(0.0);
        assertThat(found(differences, Compared.MEAN_SCORE, "").difference()).isEqualTo(0.0);
    }

    @Test
    void whoStaysAwayAndLanesOutOfOrderAreFoundToo() {
        Squad first = PLAN.squads().get(0);
        Event away = PLAN.withSquads(List.of(
                first.withArrangements(Arrangements.NONE.withChanges(
                        List.of(new LineUpChange.Absence("1-1", 1), new LineUpChange.Absence("2-1", 1)))),
                PLAN.squads().get(1)));
        PlannedFault fault = new PlannedFault(1, first.startMs() + 15 * MINUTE_MS, 30 * MINUTE_MS);
        Event broken = PLAN.withIncidents(
                new Incidents(Stops.NEVER, Stops.NEVER, List.of(fault), 1, Incidents.NONE.remedy(), 60 * MINUTE_MS));

        assertThat(found(EventComparison.run(PLAN, away, 1, 3, 2, done -> {}), Compared.SQUAD_END, "A"))
                .satisfies(difference -> {
                    assertThat(difference.difference()).isNegative();
                    assertThat(difference.isReal()).isTrue();
                });
        assertThat(found(EventComparison.run(PLAN, broken, 1, 3, 2, done -> {}), Compared.SQUAD_END, "A"))
                .satisfies(difference -> {
                    assertThat(difference.difference()).isBetween(15.0, 31.0);
                    assertThat(difference.isReal()).isTrue();
                });
    }

    /** Twelve playings over four sets. */
    @Test
    void whatIsNotRealIsHiddenByLuckOrHangsOnWhatIsNotKnown() {
        double[] none = new double[12];
        double[] hidden = {5, -4, 5, -4, -3, 6, -3, 6, 1, 1, 1, 1};
        double[] hangs = {3, -2, 3, -2, 3.1, -2.1, 3.1, -2.1, 2.9, -1.9, 2.9, -1.9};
        double[] real = {3, 3, 3, 3, 3.1, 3.1, 3.1, 3.1, 2.9, 2.9, 2.9, 2.9};
        assertThat(known(none, none)).isEqualTo(Difference.Known.NONE);
        assertThat(known(none, hidden)).isEqualTo(Difference.Known.HIDDEN);
        assertThat(known(none, hangs)).isEqualTo(Difference.Known.HANGS);
        assertThat(known(none, real)).isEqualTo(Difference.Known.REAL);
    }

    private static Difference.Known known(double[] a, double[] b) {
        var pairs = new EventComparison.Pairs(a, b, 4);
        return pairs.known(pairs.difference().truth().twoSidedP(0));
    }

    private static Difference found(List<Difference> differences, Compared compared, String squad) {
        return differences.stream()
                .filter(difference -> difference.compared() == compared
                        && difference.squad().orElse("").equals(squad))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aComparisonDoesNotDependOnTheNumberOfThreads() {
        assertThat(EventComparison.run(PLAN, FRESH, 1, 4, 3, done -> {}))
                .isEqualTo(EventComparison.run(PLAN, FRESH, 1, 4, 1, done -> {}));
        assertThatIllegalArgumentException().isThrownBy(() -> EventComparison.run(PLAN, FRESH, 1, 1, 1, done -> {}));
    }

    @Test
    void theFairnessOfAnEventDoesNotChangeIfNothingDoes() {
        FairnessResult study = FairnessStudy.run(PLAN, new FairnessPlan(1, 24, 2, true), 2, done -> {});

        FairnessComparison comparison = FairnessComparison.of(study, study);

        assertThat(comparison.spreadAfterPins()).isEqualTo(comparison.spreadBeforePins());
        assertThat(comparison.gain().orElseThrow().errorPins()).isZero();
        assertThat(comparison.groups()).hasSize(4).allSatisfy(group -> {
            assertThat(group.afterPins()).isEqualTo(group.beforePins());
            assertThat(group.changeCi90().low()).isEqualTo(0.0);
        });
    }

    @Test
    void theEventAsPlannedIsPlayedOnlyIfBothHaveTwoGroupsToCompare() {
        Event alone = SmallEvents.staying(SmallEvents.mixed(1, 3), 2);
        FairnessPlan plan = new FairnessPlan(1, 12, 2, true);
        FairnessResult one = FairnessStudy.run(alone, plan, 2, done -> {});
        FairnessResult several = FairnessStudy.run(PLAN, plan, 2, done -> {});
        List<Event> played = new ArrayList<>();
        Function<Event, FairnessResult> study = event -> {
            played.add(event);
            return several;
        };

        assertThat(FairnessComparison.withPlanned(alone, alone, one, study)).isEmpty();
        assertThat(FairnessComparison.withPlanned(alone, PLAN, several, study)).isEmpty();
        assertThat(FairnessComparison.withPlanned(PLAN, alone, one, study)).isEmpty();
        assertThat(played).isEmpty();
        Event otherFromTheStart = PLAN.withSquads(
                PLAN.squads().stream().map(squad -> squad.withPractice(1)).toList());
        assertThat(FairnessComparison.withPlanned(PLAN, otherFromTheStart, several, study))
                .contains(FairnessComparison.of(several, several));
        assertThat(played).containsExactly(PLAN);
    }

    /** Who has bowled before anything changes scores what he scores. */
    @Test
    void nothingChangesForSquadsThatBowlBeforeTheChange() {
        FairnessPlan plan = new FairnessPlan(1, 12, 2, true);
        FairnessResult asPlanned = FairnessStudy.run(PLAN, plan, 2, done -> {});
        Squad second = PLAN.squads().get(1);
        Event changed = PLAN.withSquads(List.of(
                PLAN.squads().get(0),
                second.startingAt(second.startMs() + 60 * MINUTE_MS).withPractice(30 * MINUTE_MS)));
        FairnessResult after = FairnessStudy.run(changed, plan, 2, done -> {});

        FairnessComparison comparison = FairnessComparison.withPlanned(PLAN, changed, after, event -> asPlanned)
                .orElseThrow();

        assertThat(comparison.bowledBefore()).containsExactly("A");
        assertThat(comparison.groups())
                .isNotEmpty()
                .allSatisfy(group -> assertThat(group.id()).startsWith("B/"));
    }

    @Test
    void studiesThatDidNotMeetTheSameLuckAreNotCompared() {
        FairnessResult one = FairnessStudy.run(PLAN, new FairnessPlan(1, 12, 2, true), 2, done -> {});
        FairnessResult other = FairnessStudy.run(PLAN, new FairnessPlan(2, 12, 2, true), 2, done -> {});

        assertThatIllegalArgumentException().isThrownBy(() -> FairnessComparison.of(one, other));
    }

    @Test
    void aChangeThatChangesNothingIsNotTried() {
        assertThat(new Changes(FRESH, Set.of()).list().stream().map(Changes.Change::what))
                .contains(RemedyChange.rotation(new Stay()), RemedyChange.of(RemedyChange.Kind.GROUPS))
                .doesNotContain(FRESH_OIL, RemedyChange.rotation(new Ring(1, 1)));
        assertThat(new Changes(PLAN, Set.of()).list())
                .allSatisfy(change -> assertThat(change.event()).isNotEqualTo(PLAN));
    }

    @Test
    void whatIsArrangedForSquadsMakesNoRemedyOfWhatIsNone() {
        Event plain = SmallEvents.event(
                2,
                new Stay().plan(2, 2, 2),
                SmallEvents.mixed(2, 2),
                Conditioning.STRIP_AND_OIL,
                Conditioning.STRIP_AND_OIL);
        Event arranged = withBreaks(plain, 10 * MINUTE_MS);
        FairnessPlan plan = new FairnessPlan(1, 24, 2, true);

        List<Remedy> remedies = remedies(arranged, plan);

        assertThat(new Changes(arranged, Set.of()).list())
                .extracting(Changes.Change::what)
                .doesNotContain(FRESH_OIL, RemedyChange.rotation(new Stay()))
                .isEqualTo(new Changes(plain, Set.of())
                        .list().stream().map(Changes.Change::what).toList());
        assertThat(remedies.get(0).change().kind()).isEqualTo(RemedyChange.Kind.AS_IT_IS);
        assertThat(remedies.get(0).isChoice()).as("%s", remedies).isTrue();
        assertThat(remedies).isEqualTo(remedies(plain, plan));
    }

    private static List<Remedy> remedies(Event event, FairnessPlan plan) {
        FairnessResult study = FairnessStudy.run(event, plan, 2, done -> {});
        return RemedyStudy.run(
                new PossibleEvents(event, 1),
                Set.of(),
                study,
                plan.playings(),
                Costs.USUAL,
                Execution.on(2),
                done -> {});
    }

    /** Every squad rests after its first game. */
    private static Event withBreaks(Event event, long lengthMs) {
        Arrangements rest = new Arrangements(List.of(new Break(1, 0, lengthMs)), List.of(), OptionalInt.empty());
        return event.withSquads(event.squads().stream()
                .map(squad -> squad.withArrangements(rest))
                .toList());
    }

    @Test
    void aSquadsBreaksStayAndItsLateComersGoWithItIfSquadsPlayInReverse() {
        LineUpChange late = new LineUpChange.Absence("1-1", 2);
        List<Squad> squads = withBreaks(FRESH, 10 * MINUTE_MS).squads();
        Event event = FRESH.withSquads(List.of(
                squads.get(0), FRESH.squads().get(1).withArrangements(Arrangements.NONE.withChanges(List.of(late)))));

        Event reversed = new Changes(event, Set.of())
                .list().stream()
                        .filter(change -> change.what().kind() == RemedyChange.Kind.SQUAD_ORDER)
                        .findFirst()
                        .orElseThrow()
                        .event();

        assertThat(reversed.squads()).extracting(Squad::id).containsExactly("B", "A");
        assertThat(reversed.squads().get(0).arrangements())
                .isEqualTo(squads.get(0).arrangements().withChanges(List.of(late)));
        assertThat(reversed.squads().get(1).arrangements()).isEqualTo(Arrangements.NONE);
    }

    @Test
    void noChangeSendsAGroupToASparePair() {
        Rotation right = new Ring(1, 1).plan(3, 3, 3).among(List.of(0, 2, 3), 4);
        Event event = SmallEvents.event(
                        4, right, SmallEvents.mixed(3, 2), Conditioning.STRIP_AND_OIL, Conditioning.NONE)
                .withSpare(List.of(new LanePair(3, 4)));

        List<Changes.Change> changes = new Changes(event, Set.of()).list();

        assertThat(changes)
                .extracting(Changes.Change::what)
                .contains(RemedyChange.rotation(new Stay()), RemedyChange.rotation(new Ring(2, 1)))
                .doesNotContain(RemedyChange.rotation(new Ring(1, 1)));
        assertThat(changes.stream().flatMap(change -> change.event().rotations().stream()))
                .noneMatch(rotation -> rotation.visits(1));
    }

    @Test
    void noChangeSendsAGroupToAPairThatIsLost() {
        Rotation right = new Ring(1, 1).plan(3, 4, 3);
        Event event = SmallEvents.event(4, right, SmallEvents.mixed(3, 2), Conditioning.STRIP_AND_OIL);
        Event changed = PairLoss.of(event, Set.of(2), 0, 1, RotationRepair.Priority.FEW_CHANGES)
                .event();

        List<Changes.Change> changes = new Changes(changed, Set.of(2)).list();

        assertThat(changes)
                .extracting(Changes.Change::what)
                .contains(RemedyChange.rotation(new Stay()), RemedyChange.rotation(new Ring(1, 1)));
        assertThat(changes.stream()
                        .filter(change -> !change.event().rotations().equals(changed.rotations()))
                        .flatMap(change -> change.event().rotations().stream()))
                .isNotEmpty()
                .noneMatch(rotation -> rotation.visits(2));
    }

    @Test
    void everyChangeIsPlayedAndTheBestOnesAreMarked() {
        FairnessResult study = FairnessStudy.run(PLAN, new FairnessPlan(1, 36, 2, true), 2, done -> {});

        List<Remedy> remedies = RemedyStudy.run(
                new PossibleEvents(PLAN, 1), Set.of(), study, 36, Costs.USUAL, Execution.on(2), done -> {});

        assertThat(remedies).hasSize(1 + new Changes(PLAN, Set.of()).list().size());
        assertThat(remedies.get(0).change().kind()).isEqualTo(RemedyChange.Kind.AS_IT_IS);
        Remedy fresh = remedies.stream()
                .filter(remedy -> remedy.change().equals(FRESH_OIL))
                .findFirst()
                .orElseThrow();
        assertThat(fresh.spreadPins()).isLessThan(remedies.get(0).spreadPins());
        assertThat(fresh.gainPins()).isPositive();
        // Cleaning is what is added: two pairs, once.
        double cleaning = new OilingCost(Costs.USUAL, PLAN).pairAllAtOnce(Conditioning.STRIP_AND_OIL)
                - new OilingCost(Costs.USUAL, PLAN).pairAllAtOnce(Conditioning.OIL_OVER);
        assertThat(fresh.extraCost()).isCloseTo(2 * cleaning, within(1e-9));
        assertThat(remedies).anySatisfy(remedy -> assertThat(remedy.isChoice()).isTrue());
        for (Remedy remedy : remedies) {
            assertThat(remedy.isChoice()).isEqualTo(remedy.isChoiceAmong(remedies));
            assertThat(!remedy.isChoice() || remedy.isAsItIs() || remedy.isShown())
                    .isTrue();
        }
        assertThat(remedies.stream().filter(Remedy::leastRegret)).hasSize(1);
    }
}
