package lanetide.squads.fairness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PossibleEvents;
import org.junit.jupiter.api.Test;

class FairnessStudyTest {
    private static final Event TWO_SQUADS = SmallEvents.twoSquads(SmallEvents.mixed(3, 3), 2, Conditioning.NONE);

    /** Nothing is found where there is nothing, whoever plays. */
    @Test
    void onLanesThatNeverChangeWhatIsNotKnownOfASeatIsZeroToTheLastDigit() {
        FairnessResult result = FairnessStudy.run(
                new PossibleEvents(TWO_SQUADS, 5), new FairnessPlan(3, 60, 2, false), Execution.on(2), done -> {});
        assertThat(result.sets()).isEqualTo(5);
        assertThat(result.effects()).allSatisfy(effect -> {
            assertThat(effect.ci90().low()).isZero();
            assertThat(effect.ci90().high()).isZero();
        });
    }

    @Test
    void whatIsNotKnownWidensAnIntervalThatHeldLuckAlone() {
        FairnessPlan plan = new FairnessPlan(3, 60, 2, true);
        FairnessResult result = FairnessStudy.run(new PossibleEvents(TWO_SQUADS, 5), plan, Execution.on(2), done -> {});
        assertThat(result.effects()).allSatisfy(effect -> {
            assertThat(effect.ci90().low()).isLessThanOrEqualTo(effect.luck90().low() + 1e-9);
            assertThat(effect.ci90().high())
                    .isGreaterThanOrEqualTo(effect.luck90().high() - 1e-9);
            assertThat(effect.signShare()).isBetween(0.2, 1.0);
        });
        assertThat(FairnessStudy.run(new PossibleEvents(TWO_SQUADS, 5), plan, Execution.on(3), done -> {})
                        .effects())
                .isEqualTo(result.effects());
    }

    @Test
    void onLanesThatNeverChangeNobodyHasAnyAdvantageToTheLastDigit() {
        double most = 0;
        for (Event event : List.of(
                SmallEvents.twoSquads(SmallEvents.alike(3, 3), 2, Conditioning.NONE),
                TWO_SQUADS,
                SmallEvents.twoSquads(SmallEvents.mixed(2, 4), 2, Conditioning.OIL_OVER),
                SmallEvents.staying(SmallEvents.mixed(3, 2), 3))) {
            FairnessResult result = FairnessStudy.run(event, new FairnessPlan(3, 30, 2, false), 2, done -> {});

            assertThat(result.verdict()).isEqualTo(Verdict.FAIR);
            assertThat(result.effects()).hasSizeGreaterThan(4).allSatisfy(effect -> {
                assertThat(effect.advantagePins()).isEqualTo(0.0);
                assertThat(effect.standardErrorPins()).isEqualTo(0.0);
            });
            assertThat(result.evenness()).contains(new Evenness(0, 0, 1, 0));
            for (Effect effect : result.effects()) {
                most = Math.max(most, Math.abs(effect.advantagePins()));
            }
        }
        ReadmeRow.says(
                "still lanes: identical bowlers, mixed bowlers, groups of 2, 3 and 4, fresh, over and none: largest"
                        + " advantage",
                most + " pins");
    }

    @Test
    void onLanesThatChangeTheSameFieldHasAdvantages() {
        FairnessResult result = FairnessStudy.run(TWO_SQUADS, new FairnessPlan(3, 30, 2, true), 2, done -> {});

        assertThat(result.effects())
                .allSatisfy(effect -> assertThat(effect.advantagePins()).isNotEqualTo(0.0));
    }

    @Test
    void theAdvantagesOfAKindAddUpToZeroOverTheBowlers() {
        FairnessResult result = FairnessStudy.run(TWO_SQUADS, new FairnessPlan(5, 30, 2, true), 2, done -> {});

        for (EffectKind kind : EffectKind.values()) {
            if (kind != EffectKind.GROUP) {
                assertThat(sum(result, kind)).as("%s", kind).isCloseTo(0, within(1e-10));
            }
        }
        // Groups are told without what the hands of their bowlers are worth, and that adds up to zero over the field
        // too.
        assertThat(sum(result, EffectKind.GROUP)).isCloseTo(0, within(1e-10));
    }

    private static double sum(FairnessResult result, EffectKind kind) {
        return result.effects().stream()
                .filter(effect -> effect.kind() == kind)
                .mapToDouble(effect -> effect.bowlers() * effect.advantagePins())
                .sum();
    }

    @Test
    void theAnswerDoesNotDependOnTheNumberOfThreads() {
        FairnessPlan plan = new FairnessPlan(9, 30, 2, true);
        List<Integer> told = Collections.synchronizedList(new ArrayList<>());

        FairnessResult alone = FairnessStudy.run(TWO_SQUADS, plan, 1, told::add);

        assertThat(FairnessStudy.run(TWO_SQUADS, plan, 3, done -> {}).effects()).isEqualTo(alone.effects());
        assertThat(told).isEqualTo(IntStream.rangeClosed(1, 30).boxed().toList());
    }

    @Test
    void namingGroupsAnewChangesNothingButTheirNames() {
        Event renamed = SmallEvents.withGroups(TWO_SQUADS, group -> new Group("new " + group.id(), group.bowlers()));
        FairnessPlan plan = new FairnessPlan(2, 24, 2, true);

        List<Effect> before = FairnessStudy.run(TWO_SQUADS, plan, 2, done -> {}).effects();
        List<Effect> after = FairnessStudy.run(renamed, plan, 2, done -> {}).effects();

        assertThat(after.stream().map(Effect::advantagePins).toList())
                .isEqualTo(before.stream().map(Effect::advantagePins).toList());
        assertThat(after.stream().map(Effect::id)).contains("A/new 1");
        ReadmeRow.says("groups renamed: advantages that stay", after.size() + " of " + before.size());
    }

    @Test
    void mirroringAllHandsChangesNothingButTheNameOfTheHand() {
        Event mirrored = SmallEvents.withGroups(
                TWO_SQUADS,
                group -> new Group(
                        group.id(),
                        group.bowlers().stream()
                                .map(FairnessStudyTest::mirrored)
                                .toList()));
        FairnessPlan plan = new FairnessPlan(2, 24, 2, true);

        List<Effect> before = FairnessStudy.run(TWO_SQUADS, plan, 2, done -> {}).effects();
        List<Effect> after = FairnessStudy.run(mirrored, plan, 2, done -> {}).effects();

        double most = 0;
        for (Effect effect : before) {
            String id =
                    effect.kind() == EffectKind.HAND ? (effect.id().equals("left") ? "right" : "left") : effect.id();
            List<Effect> mirrors = after.stream()
                    .filter(other -> other.kind() == effect.kind() && other.id().equals(id))
                    .toList();
            assertThat(mirrors).hasSize(1);
            double image = mirrors.get(0).advantagePins();
            assertThat(image).isCloseTo(effect.advantagePins(), within(1e-9));
            most = Math.max(most, Math.abs(image - effect.advantagePins()));
        }
        ReadmeRow.says("hands mirrored: largest change of an advantage", ReadmeRow.offBy(most));
    }

    private static Bowler mirrored(Bowler bowler) {
        Hand other = bowler.hand() == Hand.LEFT ? Hand.RIGHT : Hand.LEFT;
        return bowler.as(bowler.id(), other);
    }

    @Test
    void aKindWithASingleClassIsLeftOut() {
        Event onePair =
                SmallEvents.event(1, new Stay().plan(1, 1, 1), SmallEvents.alike(1, 4), Conditioning.STRIP_AND_OIL);

        FairnessResult result = FairnessStudy.run(onePair, new FairnessPlan(1, 10, 2, true), 1, done -> {});

        assertThat(result.effects()).isEmpty();
        assertThat(result.verdict()).isEqualTo(Verdict.FAIR);
        assertThat(result.evenness()).isEmpty();
    }

    @Test
    void tooFewPlayingsAndTooSmallAMarginAreRefused() {
        assertThat(FairnessStudy.fewestPlayings(TWO_SQUADS)).isEqualTo(12);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FairnessStudy.run(TWO_SQUADS, new FairnessPlan(1, 11, 2, true), 1, done -> {}))
                .withMessageContaining("at least 12 playings");
        assertThatIllegalArgumentException().isThrownBy(() -> new FairnessPlan(1, 100, 0, true));
        assertThatIllegalArgumentException().isThrownBy(() -> new FairnessPlan(1, 100, Double.NaN, true));
    }

    @Test
    void everyBowlerVisitsEverySquadEquallyOftenInARound() {
        int[] squads = IntStream.range(0, 12).map(seat -> seat / 4).toArray();

        int[][] bowlerAtSeat =
                new Seatings(squads, 6, new lanetide.des.random.RandomStreams(1).forReplication(0)).bowlerAtSeat();

        int[][] visits = new int[12][3];
        for (int[] seating : bowlerAtSeat) {
            assertThat(seating).containsExactlyInAnyOrder(IntStream.range(0, 12).toArray());
            for (int seat = 0; seat < 12; seat++) {
                visits[seating[seat]][squads[seat]]++;
            }
        }
        assertThat(List.of(visits)).allSatisfy(of -> assertThat(of).containsExactly(2, 2, 2));
    }

    @Test
    void aRoundHasAsManySeatingsAsLetsEverybodyVisitEverySquad() {
        assertThat(IntStream.rangeClosed(1, 8).map(SeatingRounds::seatings)).containsExactly(3, 4, 3, 4, 5, 6, 6, 6);
    }
}
