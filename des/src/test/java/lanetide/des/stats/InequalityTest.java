package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import lanetide.des.ReadmeRow;
import lanetide.des.random.RandomStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sources: Jain from teaching slides after R. Jain, D. Chiu and W. Hawe 1984, two decimals; Gini from the recorded test
 * output of the R package ineq (C. Damgaard and J. Weiner, "Describing inequality in plant size or fecundity", Ecology
 * 81, 2000, figure 2; the ten numbers of its help page); the rest computed from the definitions by a separate program.
 */
class InequalityTest {

    private static final double[] TEN = {541, 1463, 2445, 3438, 4437, 5401, 6392, 8304, 11904, 22261};

    @ParameterizedTest(name = "{0}: Jain {1}, Gini {2}")
    @CsvSource({
        "1 3 5, 0.7714, 0.296296",
        "1 0 0 0, 0.25, 0.75",
        "541 1463 2445 3438 4437 5401 6392 8304 11904 22261, 0.543238, 0.4620911"
    })
    void theIndicesAreThoseOfTheTables(String amounts, double jain, double gini) {
        double[] x = Arrays.stream(amounts.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(Inequality.jain(x)).isCloseTo(jain, within(5e-5));
        assertThat(Inequality.gini(x)).isCloseTo(gini, within(5e-7));
    }

    @Test
    void jainIsThatOfTheSlides() {
        assertThat(Inequality.jain(new double[] {1, 3, 5})).isCloseTo(0.77, within(0.005));
        assertThat(Inequality.jain(new double[] {1, 4, 5})).isCloseTo(0.7937, within(5e-5));
        assertThat(Inequality.jain(new double[] {1, 2, 5})).isCloseTo(0.7111, within(5e-5));
        assertThat(Inequality.jain(TEN)).isCloseTo(0.543238, within(5e-7));
        ReadmeRow.says("Gini", String.format(Locale.ROOT, "%.7f", Inequality.gini(TEN)));
    }

    @Test
    void jainSaysWhatShareOfTheUsersHasEqualParts() {
        double[] tenOfHundred = new double[100];
        Arrays.fill(tenOfHundred, 0, 10, 20);
        assertThat(Inequality.jain(tenOfHundred)).isCloseTo(0.10, within(1e-12));
        ReadmeRow.says(
                "Jain",
                String.format(
                        Locale.ROOT,
                        "%.2f, %.2f, %.2f, %.2f",
                        Inequality.jain(new double[] {1, 3, 5}),
                        Inequality.jain(new double[] {1, 4, 5}),
                        Inequality.jain(new double[] {1, 2, 5}),
                        Inequality.jain(tenOfHundred)));
    }

    @Test
    void oneRichAmongManyAndManyPoorHaveTheSameGini() {
        double[] oneRich = new double[10];
        Arrays.fill(oneRich, 50.0 / 9);
        oneRich[9] = 50;
        double[] manyPoor = {2, 2, 2, 2, 2, 18, 18, 18, 18, 18};
        assertThat(Inequality.gini(oneRich)).isCloseTo(0.4, within(1e-12));
        assertThat(Inequality.gini(manyPoor)).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void jainAndTheCoefficientOfVariationSayTheSameOfAnyAmounts() {
        var random = new RandomStreams(3).stream("amounts");
        for (int i = 0; i < 200; i++) {
            double[] x = DoubleStream.generate(random::nextDouble).limit(2 + i).toArray();
            double mean = DoubleStream.of(x).average().orElseThrow();
            double variance = DoubleStream.of(x)
                    .map(a -> (a - mean) * (a - mean))
                    .average()
                    .orElseThrow();
            assertThat(Inequality.jain(x))
                    .as("draw %d", i)
                    .isCloseTo(1 / (1 + variance / (mean * mean)), within(1e-12));
        }
    }

    @Test
    void equalAmountsAreSharedEqually() {
        double[] equal = {7, 7, 7};
        assertThat(Inequality.jain(equal)).isCloseTo(1, within(1e-15));
        assertThat(Inequality.gini(equal)).isCloseTo(0, within(1e-15));
    }

    @Test
    void amountsBelowZeroAndAllZeroAreRefused() {
        ToDoubleFunction<double[]> jain = Inequality::jain;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> jain.applyAsDouble(new double[] {1, -2}))
                .withMessage("amount is -2.0, but must be finite and at least 0");
        assertThatIllegalArgumentException().isThrownBy(() -> jain.applyAsDouble(new double[] {0, 0}));
        assertThatIllegalArgumentException().isThrownBy(() -> jain.applyAsDouble(new double[0]));
        assertThatIllegalArgumentException().isThrownBy(() -> Inequality.gini(new double[] {Double.NaN}));
    }
}
