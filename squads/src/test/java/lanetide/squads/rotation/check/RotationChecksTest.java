package lanetide.squads.rotation.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.rotation.Hands;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationNames;
import lanetide.squads.rotation.Session;
import lanetide.squads.rotation.Tables;
import lanetide.squads.rotation.check.StructuralCheck.Outcome;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RotationChecksTest {

    @Test
    void movingOnePairRightIsCalledTheWorstUnasked() {
        StructuralCheck check = check(new Ring(1, 1).plan(12, 12, 12), RotationChecks.CARRY_OVER);

        assertThat(check.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(check.text()).contains("index is 1452", "evenly spread it would be 132", "the worst there is");
    }

    @Test
    void aBalancedRotationIsToldThatNothingIsBetter() {
        List<StructuralCheck> checks = checks(new RowComplete().plan(8, 8, 8), 8);

        assertThat(checks)
                .filteredOn(check -> !List.of(RotationChecks.WALKING, RotationChecks.EVEN_PAIRS)
                        .contains(check.code()))
                .allMatch(check -> check.outcome() == Outcome.HOLDS);
        assertThat(checks).extracting(StructuralCheck::code).doesNotHaveDuplicates();
    }

    @Test
    void theFirstRepeatedPairIsTheEarliestInPlay() {
        Rotation rotation =
                Tables.ofGames(5, List.of(List.of(0, 1), List.of(2, 3), List.of(4, 1), List.of(0, 2), List.of(1, 4)));
        StructuralCheck check = check(rotation, RotationChecks.REPEATED_PAIR);

        assertThat(check.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(check.text())
                .startsWith("The first repeated pair: game 3: group 2 is back on pair 2, where it bowled in game 1.")
                .contains("1 more such return.", "With 5 pairs nobody need come back in up to 5 games.");
    }

    @Test
    void moreGamesThanPairsMustRepeatAndAreNotBlamed() {
        StructuralCheck check = check(new Ring(1, 1).plan(4, 4, 6), RotationChecks.REPEATED_PAIR);

        assertThat(check.outcome()).isEqualTo(Outcome.NOTE);
        assertThat(check.text()).contains("game 5", "6 games on 4 pairs", "must come back");
    }

    @Test
    void sixGroupsThatMoveFourOfTwelvePairsAreToldOfGameFour() {
        assertThat(check(new Ring(4, 1).plan(6, 12, 6), RotationChecks.REPEATED_PAIR)
                        .text())
                .contains("game 4: group 1 is back on pair 1, where it bowled in game 1.");
    }

    @Test
    void aCollisionIsAllThatIsSaid() {
        List<StructuralCheck> checks = checks(Tables.ofGames(3, List.of(List.of(0, 0), List.of(1, 1))), 3);

        assertThat(checks).hasSize(1);
        assertThat(checks.get(0).outcome()).isEqualTo(Outcome.FAILS);
        assertThat(checks.get(0).text())
                .isEqualTo("Game 1: group 1 and group 2 are sent to pair 1 together. And 1 more such meeting.");
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5, 7})
    void whatIsImpossibleIsSaidAsSuch(int groups) {
        StructuralCheck check = check(new RowComplete().plan(groups, groups, groups), RotationChecks.EXISTENCE);

        assertThat(check.outcome()).isEqualTo(Outcome.NOTE);
        assertThat(check.text())
                .startsWith("Impossible for " + groups + " groups")
                .contains("over " + 2 * groups + " games");
    }

    @ParameterizedTest
    @CsvSource({"9, said to exist", "11, knows of no rotation"})
    void whatIsNotKnownIsSaidAsSuch(int groups, String words) {
        assertThat(check(new Ring(1, 1).plan(groups, groups, 3), RotationChecks.EXISTENCE)
                        .text())
                .contains(words);
    }

    @ParameterizedTest
    @CsvSource({"10, 5 of 10, NOTE", "11, 11 of 11, HOLDS", "12, 6 of 12, NOTE"})
    void theHazardOfAnEvenNumberOfPairsIsNamed(int pairs, String met, Outcome outcome) {
        StructuralCheck check = check(new Ring(1, 1).plan(pairs, pairs, pairs), RotationChecks.EVEN_PAIRS);

        assertThat(check.text()).contains("meet " + met + " opposite groups");
        assertThat(check.outcome()).isEqualTo(outcome);
    }

    @Test
    void theLongestWalkNamesWhoWalksAndSkipsNoClosedPair() {
        Rotation rotation = Tables.ofGames(3, List.of(List.of(0, 1), List.of(1, 2), List.of(2, 0)));
        Walk walk = Walk.of(rotation, List.of(1, 3, 11));

        assertThat(walk.pairsPerGame()).isEqualTo((1 + 4 + 4 + 5) / 4.0);
        assertThat(walk.longestPairs()).isEqualTo(5);
        assertThat(walk.longest().orElseThrow().group()).isEqualTo(1);
        assertThat(RotationChecks.of(rotation, List.of(1, 3, 11), 3, RotationNames.numbered()))
                .filteredOn(check -> check.code().equals(RotationChecks.WALKING))
                .allMatch(check -> check.text()
                        .equals(
                                "A move is 3.5 pairs long on average. The longest, 5 pairs: group 2 walks from pair 3 to"
                                        + " pair 1 after game 2."));
        assertThatThrownBy(() -> Walk.of(rotation, List.of(1, 3))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whoStaysIsTold() {
        List<StructuralCheck> checks = checks(new Stay().plan(4, 4, 3), 4);

        assertThat(checks).extracting(StructuralCheck::text).anyMatch(text -> text.contains("Nobody walks"));
        assertThat(checks).extracting(StructuralCheck::text).anyMatch(text -> text.contains("Nobody leaves his pair"));
        assertThat(checks).noneMatch(check -> check.outcome() == Outcome.FAILS);
    }

    @Test
    void groupsLeftOutInSomeGamesFindLanesOfDifferentAge() {
        List<Session> sessions = List.of(
                new Session("A", true, new Ring(1, 1).plan(2, 3, 3), List.of(new Hands(3, 0), new Hands(2, 1))));
        List<StructuralCheck> checks = EventChecks.of(sessions);

        assertThat(checks).extracting(StructuralCheck::code).doesNotHaveDuplicates();
        assertThat(text(checks, EventChecks.WEAR)).contains("squad A 0.3 to 0.7", "lanes of different age");
        assertThat(text(checks, EventChecks.LANE_SIDES)).contains("4 bowlers start on the left lane", "2 do");
        assertThat(text(checks, EventChecks.SQUAD_ORDER)).contains("oiling of its own");
    }

    @Test
    void bowlersOfOneHandNeedNoWordOnTheOther() {
        List<Session> sessions =
                List.of(new Session("A", true, new Ring(1, 1).plan(3, 3, 3), Collections.nCopies(3, new Hands(2, 0))));

        assertThat(text(EventChecks.of(sessions), EventChecks.HANDS)).isEqualTo("All bowlers deliver from one side.");
    }

    private static String text(List<StructuralCheck> checks, String code) {
        return checks.stream()
                .filter(check -> check.code().equals(code))
                .findFirst()
                .orElseThrow()
                .text();
    }

    private static StructuralCheck check(Rotation rotation, String code) {
        return checks(rotation, rotation.pairs()).stream()
                .filter(check -> check.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static List<StructuralCheck> checks(Rotation rotation, int pairsInUse) {
        List<Integer> leftLanes = IntStream.range(0, rotation.pairs())
                .map(pair -> 2 * pair + 1)
                .boxed()
                .toList();
        return RotationChecks.of(rotation, leftLanes, pairsInUse, RotationNames.numbered());
    }
}
