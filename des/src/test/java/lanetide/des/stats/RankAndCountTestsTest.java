package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Published data; statistics published where said, otherwise computed from the definition by a separate program. */
class RankAndCountTestsTest {

    /** Times to round first base by three methods, M. Hollander and D. A. Wolfe 1973, p. 140; help page of R's friedman.test. */
    private static final double[][] ROUNDING_TIMES = {
        {5.40, 5.50, 5.55}, {5.85, 5.70, 5.75}, {5.20, 5.60, 5.50}, {5.55, 5.50, 5.40}, {5.90, 5.85, 5.70},
        {5.45, 5.55, 5.60}, {5.40, 5.40, 5.35}, {5.45, 5.50, 5.35}, {5.25, 5.15, 5.00}, {5.85, 5.80, 5.70},
        {5.25, 5.20, 5.10}, {5.65, 5.55, 5.45}, {5.60, 5.35, 5.45}, {5.05, 5.00, 4.95}, {5.50, 5.50, 5.40},
        {5.45, 5.55, 5.50}, {5.55, 5.55, 5.35}, {5.45, 5.50, 5.55}, {5.50, 5.45, 5.25}, {5.65, 5.60, 5.40},
        {5.70, 5.65, 5.55}, {6.30, 6.30, 6.25}
    };

    /** Sodium after six diuretics (rows) in six persons (columns), L. Sachs 1997, p. 675, by the R package PMCMRplus. */
    private static final double[][] SODIUM = {
        {3.88, 5.64, 5.76, 4.25, 5.91, 4.33},
        {30.58, 30.14, 16.92, 23.19, 26.74, 10.91},
        {25.24, 33.52, 25.45, 18.85, 20.45, 26.67},
        {4.44, 7.94, 4.04, 4.4, 4.23, 4.36},
        {29.41, 30.72, 32.92, 28.23, 23.35, 12},
        {38.87, 33.12, 39.15, 28.06, 38.23, 26.65}
    };

    @Test
    void friedmanWithTiesIsThatOfRsHelpPage() {
        FriedmanTest test = FriedmanTest.of(ROUNDING_TIMES);
        assertThat(test.chiSquare()).isCloseTo(11.142857, within(5e-7));
        assertThat(test.degreesOfFreedom()).isEqualTo(2);
        assertThat(test.p()).isCloseTo(0.003805, within(5e-7));
        assertThat(test.kendallW()).isCloseTo(0.2532468, within(5e-8));
    }

    @Test
    void imanAndDavenportsFFollowsFromIt() {
        FriedmanTest test = FriedmanTest.of(ROUNDING_TIMES);
        assertThat(test.imanDavenportF()).isCloseTo(7.12174, within(5e-6));
        assertThat(test.denominatorDegreesOfFreedom()).isEqualTo(42);
        assertThat(test.imanDavenportP()).isCloseTo(0.0021713, within(5e-8));
    }

    @Test
    void friedmanOfTheWarpBreaksIsAThird() {
        FriedmanTest test = FriedmanTest.of(new double[][] {{44.556, 28.222}, {24, 28.778}, {24.556, 18.778}});
        assertThat(test.chiSquare()).isCloseTo(0.33333, within(5e-6));
        assertThat(test.p()).isCloseTo(0.5637, within(5e-5));
    }

    @Test
    void friedmanWithoutTiesIsThatOfSachs() {
        double[][] persons = new double[6][6];
        for (int person = 0; person < 6; person++) {
            for (int diuretic = 0; diuretic < 6; diuretic++) {
                persons[person][diuretic] = SODIUM[diuretic][person];
            }
        }
        FriedmanTest test = FriedmanTest.of(persons);
        assertThat(test.chiSquare()).isCloseTo(23.3333, within(5e-5));
        assertThat(test.degreesOfFreedom()).isEqualTo(5);
        assertThat(test.p()).isCloseTo(0.00029146, within(5e-9));
    }

    @Test
    void fullAgreementHasAnInfiniteFAndNoChance() {
        FriedmanTest test = FriedmanTest.of(new double[][] {{1, 2, 3}, {4, 5, 6}});
        assertThat(test.kendallW()).isEqualTo(1);
        assertThat(test.imanDavenportF()).isInfinite();
        assertThat(test.imanDavenportP()).isZero();
    }

    /** Help pages of the R packages rstatix and RVAideMemoire: ten blocks of three. */
    @Test
    void cochransQIsThatOfTheDefinition() {
        String outcomes = "011001011111001101011001011001";
        boolean[][] blocks = new boolean[10][3];
        for (int i = 0; i < 30; i++) {
            blocks[i / 3][i % 3] = outcomes.charAt(i) == '1';
        }
        CochranQTest test = CochranQTest.of(blocks);
        assertThat(test.q()).isCloseTo(10.88889, within(5e-6));
        assertThat(test.degreesOfFreedom()).isEqualTo(2);
        assertThat(test.p()).isCloseTo(0.0043202, within(5e-8));
    }

    /** On two outcomes ranks and counts tell the same story, since ranks of ties are linear in the outcome. */
    @Test
    void cochranIsFriedmanOfOutcomes() {
        boolean[][] blocks = {{true, false, false}, {true, true, false}, {false, false, true}, {true, false, false}};
        double[][] values = Arrays.stream(blocks)
                .map(block -> new double[] {block[0] ? 1 : 0, block[1] ? 1 : 0, block[2] ? 1 : 0})
                .toArray(double[][]::new);
        assertThat(CochranQTest.of(blocks).q())
                .isCloseTo(FriedmanTest.of(values).chiSquare(), within(1e-12));
    }

    @Test
    void whatCannotBeRankedOrComparedIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FriedmanTest.of(new double[][] {{1, 1}, {2, 2}}))
                .withMessageContaining("nothing to rank");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FriedmanTest.of(new double[][] {{1, 2}, {2}}))
                .withMessage("a block has 1 values, but the first has 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FriedmanTest.of(new double[][] {{1, 2}}))
                .withMessage("there are 1 blocks of 2 treatments, but must be at least 2 of each");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FriedmanTest.of(new double[][] {{1, Double.NaN}, {1, 2}}));
        assertThatIllegalArgumentException().isThrownBy(() -> FriedmanTest.of(new double[0][]));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CochranQTest.of(new boolean[][] {{true, true}, {false, false}}))
                .withMessageContaining("nothing to compare");
    }
}
