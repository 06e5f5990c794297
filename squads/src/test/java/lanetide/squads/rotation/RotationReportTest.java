package lanetide.squads.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.Shuffled;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RotationReportTest {

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    /**
     * Index as in K. G. Russell, "Balancing carry-over effects in round robin tournaments", Biometrika 67 (1980): a
     * ring has n(n-1)&sup2;, as each group always follows the same one; a Williams square reaches the minimum n(n-1).
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            size, ring, williams
            4,    36,   12
            6,    150,  30
            8,    392,  56
            """)
    void movingOnePairIsTheWorstDesignAndWilliamsTheBest(int size, int ring, int williams) {
        RotationReport worst = RotationReport.of(new Ring(1, 1).plan(size, size, size));
        RotationReport best = RotationReport.of(new RowComplete().plan(size, size, size));

        assertThat(worst.carryOverIndex()).isEqualTo(ring);
        assertThat(best.carryOverIndex()).isEqualTo(williams);
        assertThat(List.of(worst.carryOverMinimum(), best.carryOverMinimum())).containsOnly(williams);
        assertThat(List.of(worst.fewestPredecessors(), worst.mostPredecessors()))
                .containsOnly(1);
        assertThat(List.of(best.fewestPredecessors(), best.mostPredecessors())).containsOnly(size - 1);
    }

    /**
     * Odd orders need two squares, one the other reversed, and then each group follows each other twice (Williams
     * 1949).
     */
    @Test
    void theTwoPublishedSquaresOfOrderFiveBalanceTogether() {
        CarryOver one = CarryOver.of(Tables.ofRows(List.of("12534", "23145", "34251", "45312", "51423")));
        CarryOver other = CarryOver.of(Tables.ofRows(List.of("43521", "54132", "15243", "21354", "32415")));

        for (int before = 0; before < 5; before++) {
            for (int after = 0; after < 5; after++) {
                assertThat(one.times(before, after) + other.times(before, after))
                        .isEqualTo(before == after ? 0 : 2);
            }
        }
    }

    @Test
    void inARingEachGroupIsToldWhomItAlwaysFollows() {
        RotationReport report = RotationReport.of(new Ring(1, 1).plan(4, 4, 4));

        assertThat(report.solePredecessors())
                .containsExactly(
                        new SolePredecessor(0, 1, 3),
                        new SolePredecessor(1, 2, 3),
                        new SolePredecessor(2, 3, 3),
                        new SolePredecessor(3, 0, 3));
    }

    @Test
    void aCollisionNamesGamePairAndEveryGroup() {
        Rotation rotation = Tables.ofGames(4, List.of(List.of(0, 1, 2, 3), List.of(2, 1, 2, 2), List.of(0, 0, 1, 1)));
        RotationReport report = RotationReport.of(rotation);

        assertThat(report.isPermutation()).isFalse();
        assertThat(report.collisions())
                .containsExactly(
                        new Collision(1, 2, List.of(0, 2, 3)),
                        new Collision(2, 0, List.of(0, 1)),
                        new Collision(2, 1, List.of(2, 3)));
    }

    @Test
    void aStayIsOneVisitAndEveryLaterReturnIsNamed() {
        Rotation rotation = Tables.ofGames(
                3, List.of(List.of(0), List.of(0), List.of(1), List.of(0), List.of(0), List.of(2), List.of(0)));

        assertThat(RotationReport.of(rotation).repeatedVisits())
                .containsExactly(new RepeatedVisit(0, 0, 0, 3), new RepeatedVisit(0, 0, 0, 6));
    }

    @Test
    void theOilOfTheLastGroupWaitsOnAnEmptyPair() {
        Rotation rotation = Tables.ofGames(4, List.of(List.of(0, 1), List.of(2, 3), List.of(1, 0)));
        CarryOver carryOver = CarryOver.of(rotation);

        assertThat(carryOver.graph().edgeSet())
                .containsExactlyInAnyOrder(new Following(0, 1, 1), new Following(1, 0, 1));
        assertThat(carryOver.index()).isEqualTo(2);
        assertThat(carryOver.minimum()).isEqualTo(2);
    }

    @Test
    void aGroupThatStaysFollowsItselfAndNobodyElse() {
        RotationReport report = RotationReport.of(new Stay().plan(4, 4, 4));

        assertThat(report.carryOverIndex()).isEqualTo(36);
        assertThat(report.carryOverMinimum()).isEqualTo(12);
        assertThat(report.mostPredecessors()).isZero();
    }

    @Test
    void findingsComeGravestFirst() {
        Rotation rotation = Tables.ofGames(2, List.of(List.of(0, 1), List.of(1, 0), List.of(0, 0), List.of(1, 0)));

        assertThat(RotationReport.of(rotation).findings())
                .extracting(finding -> (Object) finding.getClass())
                .startsWith(Collision.class, RepeatedVisit.class)
                .endsWith(SolePredecessor.class);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void renamingTheGroupsRenamesTheReport(long seed) {
        Rotation rotation = Tables.random(new SplittableRandom(seed));
        List<Integer> newName =
                new ArrayList<>(IntStream.range(0, rotation.groups()).boxed().toList());
        Collections.shuffle(newName, new Random(seed));
        Rotation renamed = renamed(rotation, newName);
        RotationReport before = RotationReport.of(rotation);
        RotationReport after = RotationReport.of(renamed);

        assertThat(after.collisions())
                .as("seed %d", seed)
                .containsExactlyElementsOf(before.collisions().stream()
                        .map(found -> new Collision(
                                found.game(),
                                found.pair(),
                                found.groups().stream()
                                        .map(newName::get)
                                        .sorted()
                                        .toList()))
                        .toList());
        assertThat(after.repeatedVisits())
                .as("seed %d", seed)
                .containsExactlyInAnyOrderElementsOf(before.repeatedVisits().stream()
                        .map(found -> new RepeatedVisit(
                                newName.get(found.group()), found.pair(), found.firstGame(), found.againGame()))
                        .toList());
        assertThat(after.solePredecessors())
                .as("seed %d", seed)
                .containsExactlyInAnyOrderElementsOf(before.solePredecessors().stream()
                        .map(found -> new SolePredecessor(
                                newName.get(found.group()), newName.get(found.predecessor()), found.times()))
                        .toList());
        assertThat(figures(after)).as("seed %d", seed).isEqualTo(figures(before));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theIndexIsNeverBelowItsMinimum(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Rotation faulty = Tables.random(random);
        int pairs = 2 + random.nextInt(8);
        Rotation drawn = new Shuffled(seed).plan(1 + random.nextInt(pairs), pairs, 1 + random.nextInt(20));
        for (Rotation rotation : List.of(faulty, drawn)) {
            CarryOver carryOver = CarryOver.of(rotation);
            assertThat(carryOver.index()).as("seed %d, %s", seed, rotation).isGreaterThanOrEqualTo(carryOver.minimum());
        }
    }

    /** Counted a second way: for each group and game, look back along the pair for the last game somebody was there. */
    @ParameterizedTest
    @MethodSource("seeds")
    void followingsAgreeWithLookingBackFromEveryVisit(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int pairs = 1 + random.nextInt(8);
        Rotation rotation = new Shuffled(seed).plan(1 + random.nextInt(pairs), pairs, 1 + random.nextInt(12));
        int[][] times = new int[rotation.groups()][rotation.groups()];
        for (int group = 0; group < rotation.groups(); group++) {
            for (int game = 1; game < rotation.games(); game++) {
                int back = game - 1;
                while (back >= 0
                        && rotation.groupOn(back, rotation.pairOf(game, group)).isEmpty()) {
                    back--;
                }
                if (back >= 0) {
                    times[rotation.groupOn(back, rotation.pairOf(game, group)).getAsInt()][group]++;
                }
            }
        }

        CarryOver carryOver = CarryOver.of(rotation);
        for (int before = 0; before < rotation.groups(); before++) {
            for (int after = 0; after < rotation.groups(); after++) {
                assertThat(carryOver.times(before, after))
                        .as("seed %d, group %d after %d", seed, after, before)
                        .isEqualTo(times[before][after]);
            }
        }
    }

    private static Rotation renamed(Rotation rotation, List<Integer> newName) {
        return Tables.ofGames(
                rotation.pairs(),
                IntStream.range(0, rotation.games())
                        .mapToObj(game -> IntStream.range(0, rotation.groups())
                                .mapToObj(group -> rotation.pairOf(game, newName.indexOf(group)))
                                .toList())
                        .toList());
    }

    private static List<Object> figures(RotationReport report) {
        return List.of(
                report.isPermutation(),
                report.carryOverIndex(),
                report.carryOverMinimum(),
                report.fewestPredecessors(),
                report.mostPredecessors());
    }
}
