package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.inference.OneWayAnova;
import org.junit.jupiter.api.Test;

class NestedMeanTest {
    /** Rows (1,3,2), (4,6,5), (2,2,5), (7,6,8) of a balanced one-way layout, in turn. */
    private static final double[] TABLE = {1, 4, 2, 7, 3, 6, 2, 6, 2, 5, 5, 8};

    @Test
    void aTableWorkedByHandComesBack() {
        NestedMean found = NestedMean.of(TABLE, 4);
        assertThat(found.mean()).isEqualTo(4.25);
        assertThat(found.within()).isCloseTo(1.5, within(1e-12));
        assertThat(found.between()).isCloseTo(4.416667, within(1e-6));
        double error = found.truth().standardError();
        assertThat(error * error).isCloseTo(5.645833, within(1e-6));
        assertThat(found.truth().degreesOfFreedom()).isEqualTo(3);
    }

    /** F of the library's analysis of variance is (n between + within) / within. */
    @Test
    void theVariancesAgreeWithTheLibrarysAnalysisOfVariance() {
        RandomGenerator random = new Well19937c(5);
        double[][] rows = new double[7][6];
        double[] inTurn = new double[42];
        for (int row = 0; row < 7; row++) {
            double own = 2 * random.nextGaussian();
            for (int i = 0; i < 6; i++) {
                rows[row][i] = own + random.nextGaussian();
                inTurn[7 * i + row] = rows[row][i];
            }
        }
        NestedMean found = NestedMean.of(inTurn, 7);
        assertThat((6 * found.between() + found.within()) / found.within())
                .isCloseTo(new OneWayAnova().anovaFValue(java.util.List.of(rows)), within(1e-9));
    }

    @Test
    void moreGroupsDoNotMakeTheTruthMoreCertainWhereLuckIsSmall() {
        assertThat(meanHalfWidth(40) / meanHalfWidth(20)).isBetween(0.9, 1.1);
    }

    /** Half the width of 68 % intervals, about one standard error, over many tables with two observations a group. */
    private static double meanHalfWidth(int groups) {
        RandomGenerator random = new Well19937c(11);
        Tally widths = new Tally();
        for (int table = 0; table < 2000; table++) {
            double[] values = new double[2 * groups];
            for (int g = 0; g < groups; g++) {
                double own = random.nextGaussian();
                values[g] = own + 0.3 * random.nextGaussian();
                values[g + groups] = own + 0.3 * random.nextGaussian();
            }
            NestedMean found = NestedMean.of(values, groups);
            widths.add(found.truth().interval(0.68).high() - found.mean());
        }
        return widths.mean();
    }

    /** Nine in ten, in 4000 truths drawn like the groups: 0.9 give or take 4 binomial errors. */
    @Test
    void theIntervalCoversOneMoreDrawOfAWorldAsOftenAsItSays() {
        RandomGenerator random = new Well19937c(3);
        int covered = 0;
        int luckAlone = 0;
        for (int truth = 0; truth < 4000; truth++) {
            double[] values = new double[24];
            for (int g = 0; g < 12; g++) {
                double own = random.nextGaussian();
                values[g] = own + random.nextGaussian();
                values[g + 12] = own + random.nextGaussian();
            }
            double world = random.nextGaussian();
            NestedMean found = NestedMean.of(values, 12);
            covered += holds(found.truth().interval(0.9), world) ? 1 : 0;
            luckAlone += holds(found.luck().interval(0.9), world) ? 1 : 0;
        }
        assertThat(covered / 4000.0).isBetween(0.88, 0.92);
        assertThat(luckAlone / 4000.0).isLessThan(0.4);
    }

    private static boolean holds(ConfidenceInterval interval, double value) {
        return interval.low() <= value && value <= interval.high();
    }

    /** Group means +2 and -2 about 0: what luck there is does not enter the square on average. */
    @Test
    void theMeanSquareOfTheGroupsIsThatWithoutTheirLuck() {
        RandomGenerator random = new Well19937c(8);
        Tally squares = new Tally();
        for (int table = 0; table < 20_000; table++) {
            double[] values = new double[6];
            for (int i = 0; i < 6; i++) {
                values[i] = (i % 2 == 0 ? 2 : -2) + random.nextGaussian();
            }
            squares.add(NestedMean.of(values, 2).meanSquare());
        }
        assertThat(squares.mean()).isCloseTo(4, within(4 * squares.standardError()));
    }

    @Test
    void withASingleGroupItIsTheUsualMean() {
        double[] values = {3, 5, 4, 8};
        Tally tally = new Tally();
        for (double value : values) {
            tally.add(value);
        }
        assertThat(NestedMean.of(values, 1).truth()).isEqualTo(MeanEstimate.of(tally));
        assertThat(NestedMean.of(values, 1).withoutLuck().standardError()).isZero();
    }

    @Test
    void groupsThatDifferByLuckAloneLeaveNothingUnknown() {
        NestedMean found = NestedMean.of(new double[] {1, 1, 3, 3, -1, -1}, 2);
        assertThat(found.between()).isZero();
        assertThat(found.shrunkMeans(new double[] {1, 1, 3, 3, -1, -1})).containsExactly(1, 1);
    }

    @Test
    void zerosAreCertainToTheLastDigit() {
        NestedMean nothing = NestedMean.of(new double[8], 4);
        assertThat(nothing.truth().interval(0.9)).isEqualTo(new ConfidenceInterval(0, 0, 0.9));
        assertThat(nothing.signShare(new double[8])).isEqualTo(1);
    }

    @Test
    void theSignIsThatOfTheWorldsAndWhatLuckLeavesOpenCountsByItsChance() {
        double[] divided = {3, -1, 3, 3, 3, -1, 3, 3};
        assertThat(NestedMean.of(divided, 4).signShare(divided)).isEqualTo(0.75);
        double[] lucky = {1, -1, 2, -1, 1, 0};
        NestedMean oneWorld = NestedMean.of(lucky, 1);
        double t = oneWorld.mean() / oneWorld.luck().standardError();
        assertThat(oneWorld.signShare(lucky))
                .isCloseTo(new NormalDistribution().cumulativeProbability(t), within(1e-9));
    }

    @Test
    void aGroupWithAnObservationMoreWeighsNoMore() {
        assertThat(NestedMean.of(new double[] {1, 5, 3}, 2).mean()).isEqualTo(3.5);
    }

    @Test
    void tooFewValuesAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> NestedMean.of(new double[] {1}, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NestedMean.of(new double[] {1, 2}, 3))
                .withMessageContaining("2 values in 3 groups");
        assertThatIllegalArgumentException().isThrownBy(() -> NestedMean.of(new double[] {1, Double.NaN}, 1));
    }

    /** The table of the variances above: rows (1,3,2), (4,6,5), (2,2,5), (7,6,8), whose means are 2, 5, 3 and 7. */
    @Test
    void squaresOfTheGroupsWithoutLuckHaveTheMeanSquareForTheirMean() {
        double[] values = {1, 4, 2, 7, 3, 6, 2, 6, 2, 5, 5, 8};
        NestedMean found = NestedMean.of(values, 4);

        double[] squares = found.meanSquares(values);

        assertThat(squares).containsExactly(new double[] {4 - 0.5, 25 - 0.5, 9 - 0.5, 49 - 0.5}, within(1e-12));
        assertThat(Arrays.stream(squares).average().orElseThrow()).isCloseTo(found.meanSquare(), within(1e-12));
    }

    /** Groups 0 to 5, each half a unit to either side: within 0.5, spread 3.5, luck of a mean 0.25. */
    private static final double[] STEPS = {-0.5, 0.5, 1.5, 2.5, 3.5, 4.5, 0.5, 1.5, 2.5, 3.5, 4.5, 5.5};

    @Test
    void degreesOfFreedomAreSatterthwaitesByHand() {
        NestedMean found = NestedMean.of(STEPS, 6);
        double variance = 3.25 * 7 / 6 + 0.5 / 12;
        double more = 3.5 * 7 / 6;
        double degrees = variance * variance / (more * more / 5 + 0.25 * 0.25 / 6);
        assertThat(degrees).isBetween(4.3, 4.5);
        assertThat(found.truth().degreesOfFreedom()).isCloseTo(degrees, within(1e-12));
        assertThat(found.luck()).isEqualTo(new MeanEstimate(2.5, Math.sqrt(0.5 / 12), 6));
        assertThat(found.withoutLuck().degreesOfFreedom()).isEqualTo(5);
        assertThat(found.withoutLuck().standardError()).isCloseTo(Math.sqrt(3.25 * 7 / 6), within(1e-12));
    }

    /** The share of the spread that is luck is 1/14; what is left open is that of each world drawn to the middle. */
    @Test
    void worldsAreDrawnTogetherAndCountByTheChanceOfTheirSign() {
        NestedMean found = NestedMean.of(STEPS, 6);
        double kept = 13.0 / 14;
        double open = Math.sqrt(kept * 0.25 + (1 - kept) * (1 - kept) * 0.5 / 12);
        double share = 0;
        for (int world = 0; world < 6; world++) {
            double drawn = 2.5 + kept * (world - 2.5);
            assertThat(found.shrunkMeans(STEPS)[world]).isCloseTo(drawn, within(1e-12));
            share += new NormalDistribution(null, drawn, open).probability(0, Double.POSITIVE_INFINITY) / 6;
        }
        assertThat(found.signShare(STEPS)).isCloseTo(share, within(1e-12));
        double[] turned = Arrays.stream(STEPS).map(value -> -value).toArray();
        assertThat(NestedMean.of(turned, 6).signShare(turned)).isCloseTo(share, within(1e-12));
    }

    @Test
    void pairsAreTheirDifferences() {
        double[] zeros = new double[STEPS.length];
        assertThat(NestedMean.ofPairs(STEPS, zeros, 6)).isEqualTo(NestedMean.of(STEPS, 6));
        assertThat(NestedMean.ofPairs(zeros, STEPS, 6).mean()).isEqualTo(-2.5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NestedMean.ofPairs(STEPS, new double[1], 1))
                .withMessageContaining("a has 12 values and b has 1");
    }
}
