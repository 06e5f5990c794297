package lanetide.squads.rotation.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.rotation.Following;
import lanetide.squads.rotation.Hands;
import lanetide.squads.rotation.RepeatedVisit;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.Session;
import lanetide.squads.rotation.Tables;
import lanetide.squads.rotation.check.RotationChecks.Code;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.RowCompleteExistence;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RotationChecksTest {

    @Test
    void movingOnePairRightIsTheWorstThereIs() {
        RotationChecks checks = checks(new Ring(1, 1).plan(12, 12, 12));

        assertThat(checks.outcome(Code.CARRY_OVER)).isEqualTo(Outcome.FAILS);
        assertThat(checks.outcome(Code.PREDECESSORS)).isEqualTo(Outcome.FAILS);
        assertThat(checks.report().carryOverIndex()).isEqualTo(1452);
        assertThat(checks.report().carryOverMinimum()).isEqualTo(132);
        assertThat(checks.mostFollowed()).contains(new Following(1, 0, 11));
    }

    @Test
    void nothingIsBetterThanABalancedRotation() {
        RotationChecks checks = checks(new RowComplete().plan(8, 8, 8));

        assertThat(checks.codes())
                .filteredOn(code -> code != Code.WALKING && code != Code.EVEN_PAIRS)
                .allMatch(code -> checks.outcome(code) == Outcome.HOLDS);
        assertThat(checks.possiblePredecessors()).isEqualTo(7);
    }

    @Test
    void aNeedlessReturnFailsAndOneThatMustBeIsNoted() {
        Rotation needless =
                Tables.ofGames(5, List.of(List.of(0, 1), List.of(2, 3), List.of(4, 1), List.of(0, 2), List.of(1, 4)));

        assertThat(checks(needless).outcome(Code.REPEATED_PAIR)).isEqualTo(Outcome.FAILS);
        assertThat(checks(needless).report().firstRepeatedVisit()).contains(new RepeatedVisit(1, 1, 0, 2));
        assertThat(checks(new Ring(1, 1).plan(4, 4, 6)).outcome(Code.REPEATED_PAIR))
                .isEqualTo(Outcome.NOTE);
    }

    @Test
    void ofGroupsThatMeetNothingElseIsAsked() {
        RotationChecks checks = checks(Tables.ofGames(3, List.of(List.of(0, 0), List.of(1, 1))));

        assertThat(checks.codes()).containsExactly(Code.PERMUTATION);
        assertThat(checks.outcome(Code.PERMUTATION)).isEqualTo(Outcome.FAILS);
    }

    @ParameterizedTest
    @CsvSource({"3, NONE", "5, NONE", "7, NONE", "9, KNOWN_ELSEWHERE", "11, UNKNOWN"})
    void whatDoesNotExistOrIsNotKnownIsNoted(int groups, RowCompleteExistence existence) {
        RotationChecks checks = checks(new Ring(1, 1).plan(groups, groups, 3));

        assertThat(checks.existence()).isEqualTo(existence);
        assertThat(checks.outcome(Code.EXISTENCE)).isEqualTo(Outcome.NOTE);
    }

    /** Counted on the two rings that left-lane and right-lane players would move in. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 10, 11, 12, 24})
    void anEvenNumberOfPairsHalvesWhomOneMeets(int pairs) {
        Rotation left = new Ring(-1, 1).plan(pairs, pairs, pairs);
        Rotation right = new Ring(1, 1).plan(pairs, pairs, pairs);
        RotationChecks checks = checks(right);

        for (int group = 0; group < pairs; group++) {
            int here = group;
            assertThat(IntStream.range(0, pairs)
                            .map(game ->
                                    right.groupOn(game, left.pairOf(game, here)).orElseThrow())
                            .distinct())
                    .hasSize(checks.opponents());
        }
        assertThat(checks.outcome(Code.EVEN_PAIRS)).isEqualTo(pairs % 2 == 0 ? Outcome.NOTE : Outcome.HOLDS);
    }

    @Test
    void theLongestWalkSkipsNoClosedPair() {
        Rotation rotation = Tables.ofGames(3, List.of(List.of(0, 1), List.of(1, 2), List.of(2, 0)));
        Walk walk = Walk.of(rotation, List.of(1, 3, 11));

        assertThat(walk.pairsPerGame()).isEqualTo((1 + 4 + 4 + 5) / 4.0);
        assertThat(walk.longestPairs()).isEqualTo(5);
        assertThat(walk.longest().orElseThrow().group()).isEqualTo(1);
        assertThatThrownBy(() -> Walk.of(rotation, List.of(1, 3))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whoStaysNeitherWalksNorComesBackNorFollows() {
        RotationChecks checks = checks(new Stay().plan(4, 4, 3));

        assertThat(checks.outcome(Code.WALKING)).isEqualTo(Outcome.HOLDS);
        assertThat(checks.outcome(Code.REPEATED_PAIR)).isEqualTo(Outcome.HOLDS);
        assertThat(checks.mostFollowed()).isEmpty();
        assertThat(checks.codes()).noneMatch(code -> checks.outcome(code) == Outcome.FAILS);
    }

    @Test
    void groupsLeftOutInSomeGamesFindLanesOfDifferentAge() {
        EventChecks checks = EventChecks.of(List.of(
                new Session("A", true, new Ring(1, 1).plan(2, 3, 3), List.of(new Hands(3, 0), new Hands(2, 1)))));

        assertThat(checks.outcome(EventChecks.Code.WEAR)).isEqualTo(Outcome.NOTE);
        assertThat(checks.outcome(EventChecks.Code.SQUAD_ORDER)).isEqualTo(Outcome.HOLDS);
        assertThat(EventChecks.isEven(checks.gamesSinceOiling("A"))).isFalse();
        assertThat(checks.startOnTheLeft()).isEqualTo(4);
        assertThat(checks.startOnTheRight()).isEqualTo(2);
        assertThat(checks.hasBothHands()).isTrue();
    }

    @Test
    void bowlersOfOneHandAreSeen() {
        EventChecks checks = EventChecks.of(
                List.of(new Session("A", true, new Ring(1, 1).plan(3, 3, 3), Collections.nCopies(3, new Hands(2, 0)))));

        assertThat(checks.hasBothHands()).isFalse();
        assertThat(checks.outcome(EventChecks.Code.HANDS)).isEqualTo(Outcome.NOTE);
    }

    private static RotationChecks checks(Rotation rotation) {
        List<Integer> leftLanes = IntStream.range(0, rotation.pairs())
                .map(pair -> 2 * pair + 1)
                .boxed()
                .toList();
        return RotationChecks.of(rotation, leftLanes, rotation.pairs());
    }
}
