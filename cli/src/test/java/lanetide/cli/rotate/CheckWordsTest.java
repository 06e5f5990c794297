package lanetide.cli.rotate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.cli.words.FindingWords;
import lanetide.squads.rotation.Hands;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.Session;
import lanetide.squads.rotation.check.EventChecks;
import lanetide.squads.rotation.check.RotationChecks;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckWordsTest {
    private static final FindingWords NUMBERED =
            new FindingWords(group -> "group " + (group + 1), pair -> "pair " + (pair + 1));

    @Test
    void movingOnePairRightIsCalledTheWorstUnasked() {
        assertThat(text(new Ring(1, 1).plan(12, 12, 12), "carry-over"))
                .contains("index is 1452", "evenly spread it would be 132", "the worst there is");
    }

    @Test
    void noCheckIsToldTwice() {
        assertThat(lines(new RowComplete().plan(8, 8, 8)))
                .extracting(CheckLine::code)
                .containsExactly(
                        "permutation",
                        "repeated-pair",
                        "predecessors",
                        "carry-over",
                        "walking",
                        "even-pairs",
                        "existence");
    }

    @Test
    void theFirstRepeatedPairIsTheEarliestInPlay() {
        Rotation rotation =
                games(5, List.of(List.of(0, 1), List.of(2, 3), List.of(4, 1), List.of(0, 2), List.of(1, 4)));

        assertThat(text(rotation, "repeated-pair"))
                .startsWith("The first repeated pair: game 3: group 2 is back on pair 2, where it bowled in game 1.")
                .contains("1 more such return.", "With 5 pairs nobody need come back in up to 5 games.");
    }

    @Test
    void moreGamesThanPairsMustRepeatAndAreNotBlamed() {
        assertThat(text(new Ring(1, 1).plan(4, 4, 6), "repeated-pair"))
                .contains("game 5", "6 games on 4 pairs", "must come back");
    }

    @Test
    void sixGroupsThatMoveFourOfTwelvePairsAreToldOfGameFour() {
        assertThat(text(new Ring(4, 1).plan(6, 12, 6), "repeated-pair"))
                .contains("game 4: group 1 is back on pair 1, where it bowled in game 1.");
    }

    @Test
    void aCollisionIsAllThatIsSaid() {
        assertThat(lines(games(3, List.of(List.of(0, 0), List.of(1, 1)))))
                .extracting(CheckLine::text)
                .containsExactly("Game 1: group 1 and group 2 are sent to pair 1 together. And 1 more such meeting.");
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5, 7})
    void whatIsImpossibleIsSaidAsSuch(int groups) {
        assertThat(text(new RowComplete().plan(groups, groups, groups), "existence"))
                .startsWith("Impossible for " + groups + " groups")
                .contains("over " + 2 * groups + " games");
    }

    @ParameterizedTest
    @CsvSource({"9, said to exist", "11, knows of no rotation"})
    void whatIsNotKnownIsSaidAsSuch(int groups, String words) {
        assertThat(text(new Ring(1, 1).plan(groups, groups, 3), "existence")).contains(words);
    }

    @ParameterizedTest
    @CsvSource({"10, 5 of 10", "11, 11 of 11", "12, 6 of 12"})
    void theHazardOfAnEvenNumberOfPairsIsNamed(int pairs, String met) {
        assertThat(text(new Ring(1, 1).plan(pairs, pairs, pairs), "even-pairs"))
                .contains("meet " + met + " opposite groups");
    }

    @Test
    void theLongestWalkNamesWhoWalks() {
        Rotation rotation = games(3, List.of(List.of(0, 1), List.of(1, 2), List.of(2, 0)));

        assertThat(RotationCheckWords.of(RotationChecks.of(rotation, List.of(1, 3, 11), 3), NUMBERED))
                .extracting(CheckLine::text)
                .contains(
                        "A move is 3.5 pairs long on average. The longest, 5 pairs: group 2 walks from pair 3 to pair 1 after"
                                + " game 2.");
    }

    @Test
    void inARingEachGroupIsToldWhomItAlwaysFollows() {
        assertThat(text(new Ring(1, 1).plan(4, 4, 4), "predecessors"))
                .contains("Each of the 3 times group 1 takes over a pair from another group, it is from group 2.");
    }

    @Test
    void whoStaysIsTold() {
        Rotation stay = new Stay().plan(4, 4, 3);

        assertThat(text(stay, "walking")).isEqualTo("Nobody walks.");
        assertThat(text(stay, "repeated-pair")).contains("Nobody leaves his pair");
    }

    @Test
    void groupsLeftOutInSomeGamesAreToldThatTheirLanesDiffer() {
        List<CheckLine> lines = EventCheckWords.of(EventChecks.of(List.of(
                new Session("A", true, new Ring(1, 1).plan(2, 3, 3), List.of(new Hands(3, 0), new Hands(2, 1))))));

        assertThat(lines).extracting(CheckLine::code).doesNotHaveDuplicates();
        assertThat(text(lines, "wear")).contains("squad A 0.3 to 0.7", "lanes of different age");
        assertThat(text(lines, "lane-sides")).contains("4 bowlers start on the left lane", "2 do");
        assertThat(text(lines, "squad-order")).contains("oiling of its own");
    }

    @Test
    void bowlersOfOneHandNeedNoWordOnTheOther() {
        List<Session> sessions =
                List.of(new Session("A", true, new Ring(1, 1).plan(3, 3, 3), Collections.nCopies(3, new Hands(2, 0))));

        assertThat(text(EventCheckWords.of(EventChecks.of(sessions)), "hands"))
                .isEqualTo("All bowlers deliver from one side.");
    }

    @Test
    void squadsOnOneOilingAreToldInWhichOrdersNobodyIsWorseOff() {
        List<Session> sessions = IntStream.range(0, 3)
                .mapToObj(squad -> new Session(
                        "S" + squad, squad == 0, new Ring(1, 1).plan(4, 4, 2), Collections.nCopies(4, new Hands(2, 1))))
                .toList();

        assertThat(text(EventCheckWords.of(EventChecks.of(sessions)), "squad-order"))
                .contains(
                        "3 squads",
                        "impossible",
                        "6 days: S0, S1, S2; S1, S2, S0; S2, S0, S1; S2, S1, S0; S0, S2, S1; S1, S0, S2.");
    }

    private static String text(Rotation rotation, String code) {
        return text(lines(rotation), code);
    }

    private static String text(List<CheckLine> lines, String code) {
        return lines.stream()
                .filter(line -> line.code().equals(code))
                .findFirst()
                .orElseThrow()
                .text();
    }

    private static List<CheckLine> lines(Rotation rotation) {
        List<Integer> leftLanes = IntStream.range(0, rotation.pairs())
                .map(pair -> 2 * pair + 1)
                .boxed()
                .toList();
        return RotationCheckWords.of(RotationChecks.of(rotation, leftLanes, rotation.pairs()), NUMBERED);
    }

    private static Rotation games(int pairs, List<List<Integer>> pairByGameAndGroup) {
        return new Explicit(pairByGameAndGroup)
                .plan(pairByGameAndGroup.get(0).size(), pairs, pairByGameAndGroup.size());
    }
}
