package lanetide.squads.recondition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Known optima, with the laws of wear they were worked out for in place of the simulation. */
class PublishedFormsTest {
    private static DoubleUnaryOperator weibull(double scale, double shape) {
        return age -> Math.exp(-Math.pow(age / scale, shape));
    }

    /**
     * Rows: ReliaWiki, "Optimum Replacement Time Example" (inputs; the `reliability` package prints 493.19 for it), the form of E.
     * Gutierrez-Miravete's lecture slides, and a third; computed independently from h(T) int R + R = cf / (cf - cp).
     */
    @ParameterizedTest
    @CsvSource({
        "1, 5, 1000, 2.5, 493.0470, 0.00346204, 0.61435",
        "1, 10, 10, 3, 3.824555, 0.394935, 0.352669",
        "1, 5, 10, 2, 5.106552, 0.408524, 0.724090"
    })
    void weibullAgeReplacement(
            double planned, double failed, double scale, double shape, double age, double cost, double share) {
        Optimum best = CyclePolicy.ageReplacement(weibull(scale, shape), planned, failed, 0.01 * scale, 3 * scale);

        assertThat(best.games()).isCloseTo(age, within(1e-3));
        assertThat(best.costPerGame()).isCloseTo(cost, within(1e-5 * cost));
        double meanLife = scale * Math.exp(org.apache.commons.math3.special.Gamma.logGamma(1 + 1 / shape));
        assertThat(best.costPerGame() / (failed / meanLife)).isCloseTo(share, within(1e-5));
    }

    @Test
    void weibullAgeReplacementByTheHundredAgreesWithTheDocumentedGridSearch() {
        Optimum best = CyclePolicy.ageReplacement(weibull(1000, 2.5), 1, 5, 10, 3000);

        // Python package `reliability`, documentation of its optimal replacement time: 493.19 and 0.0035.
        assertThat(best.games()).isCloseTo(493.19, within(0.2));
        assertThat(best.costPerGame()).isCloseTo(0.0035, within(5e-5));
    }

    @Test
    void discreteAgeReplacement() {
        double[] survival = IntStream.rangeClosed(1, 40)
                .mapToDouble(n -> weibull(10, 3).applyAsDouble(n))
                .toArray();

        Optimum best = CyclePolicy.ageReplacement(survival, 1, 10);

        assertThat(best.games()).isEqualTo(4);
        assertThat(best.costPerGame()).isCloseTo(0.392987, within(1e-6));
        double least = IntStream.rangeClosed(1, 40)
                .mapToDouble(n -> {
                    double length = 0;
                    for (int i = 0; i < n; i++) {
                        length += i == 0 ? 1 : survival[i - 1];
                    }
                    return (survival[n - 1] + 10 * (1 - survival[n - 1])) / length;
                })
                .min()
                .orElseThrow();
        assertThat(best.costPerGame()).isEqualTo(least);
    }

    /** Barlow and Hunter 1960: T* = scale (cp / (cm (shape - 1)))^(1 / shape). */
    @ParameterizedTest
    @CsvSource({"1, 1, 10, 2, 10, 0.2", "4, 1, 5, 2.5, 7.402143, NaN"})
    void minimalRepairAtAPowerLawRate(
            double planned, double repair, double scale, double shape, double age, double rate) {
        Optimum best = CyclePolicy.growingLoss(planned, t -> repair * Math.pow(t / scale, shape), 0.1, 100);

        assertThat(best.games()).isCloseTo(age, within(1e-5));
        if (!Double.isNaN(rate)) {
            assertThat(best.costPerGame()).isCloseTo(rate, within(1e-9));
        }
    }

    /** T* = sqrt(2 K / a), and a cost of sqrt(2 K a) a game. */
    @ParameterizedTest
    @CsvSource({"18, 1, 6, 6", "50, 1, 10, 10"})
    void linearGrowth(double renewal, double growth, double games, double cost) {
        Optimum best = CyclePolicy.growingLoss(renewal, t -> growth * t * t / 2, 0.1, 100);
        double[] byGame =
                IntStream.range(0, 60).mapToDouble(g -> growth * (g + 0.5)).toArray();
        Optimum discrete = CyclePolicy.growingLoss(renewal, byGame);

        assertThat(best.games()).isCloseTo(games, within(1e-6));
        assertThat(best.costPerGame()).isCloseTo(cost, within(1e-9));
        assertThat(discrete.games()).isEqualTo(games);
        assertThat(discrete.costPerGame()).isCloseTo(cost, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"9, 0.277558", "10, 0.531346", "11, 0.752858"})
    void wienerProcessMeetsItsLimit(double games, double chance) {
        assertThat(new WearLaw.Wiener(1, 0.5).reachedBy(games, 10)).isCloseTo(chance, within(1e-6));
    }

    @Test
    void oneInTwentyWienerPathsHasMetItsLimit() {
        assertThat(new WearLaw.Wiener(1, 0.5).ageAt(0.05, 10, 20)).isCloseTo(7.627608, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"7, 0.066128", "8, 0.156513", "9, 0.297028"})
    void gammaProcessPassesItsLimit(double games, double chance) {
        assertThat(new WearLaw.GammaProcess(2, 0.5).reachedBy(games, 10)).isCloseTo(chance, within(1e-6));
    }

    @Test
    void oneInTwentyGammaPathsHasPassedItsLimit() {
        assertThat(new WearLaw.GammaProcess(2, 0.5).ageAt(0.05, 10, 20)).isCloseTo(6.726905, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"6, 0.14914, 6.750, 0.00168", "7.5, 0.13265, 8.250, 0.02358", "8, 0.13940, 8.750, 0.05495"})
    void gammaProcessUnderAControlLimit(double control, double cost, double games, double fails) {
        ControlLimit policy = ControlLimit.of(new WearLaw.GammaProcess(2, 0.5), control, 10, 1, 5);

        assertThat(policy.costPerGame()).isCloseTo(cost, within(1e-5));
        assertThat(policy.meanGames()).isCloseTo(games, within(1e-3));
        assertThat(policy.failShare()).isCloseTo(fails, within(1e-5));
    }

    @Test
    void theBestControlLimitOfThatProcessLiesNearSevenAndAHalf() {
        double best = IntStream.rangeClosed(20, 36)
                .mapToDouble(quarter -> quarter / 4.0)
                .boxed()
                .min(java.util.Comparator.comparingDouble(
                        control -> ControlLimit.of(new WearLaw.GammaProcess(2, 0.5), control, 10, 1, 5)
                                .costPerGame()))
                .orElseThrow();

        assertThat(best).isBetween(7.25, 7.5);
    }

    /** What the simulation's paths are put through, fed with paths of the law whose answer is known. */
    @Test
    void aControlLimitOnDrawnPathsGivesWhatTheLawSays() {
        GammaDistribution wear = new GammaDistribution(new Well19937c(1), 2, 0.5);
        double[][] paths = new double[20_000][40];
        for (double[] path : paths) {
            double state = 0;
            for (int game = 0; game < path.length; game++) {
                state += wear.sample();
                path[game] = state;
            }
        }

        ControlLimit policy = ControlLimit.onPaths(paths, 7.5, 10, 1, 5);

        assertThat(policy.costPerGame()).isCloseTo(0.13265, within(0.002));
        assertThat(policy.meanGames()).isCloseTo(8.25, within(0.05));
    }

    /**
     * Heilmeier, Graf and Lienkamp (IEEE ITSC 2018), the basic parameter file of their open race simulation: 55 laps, three compounds
     * that wear linearly, 2 + 16.5 + 3 s for a stop, 1 s on cold tyres, and two compounds at least, as the rules of the sport have it.
     * Best losses computed independently by trying every split.
     */
    @ParameterizedTest
    @CsvSource({"2, 86.07", "3, 90.48", "4, 102.45"})
    void tyreStints(int stints, double loss) {
        List<double[]> compounds = List.of(compound(1.2, 0.02), compound(0.5, 0.05), compound(0, 0.09));
        double stop = 2 + 16.5 + 3 + 1;

        double best = Double.POSITIVE_INFINITY;
        for (int first = 1; first <= 55 - stints + 1; first++) {
            for (int second = 1; first + second <= 55 - stints + 2; second++) {
                int left = 55 - first - second;
                boolean allSet = stints == 2;
                if (allSet == (left == 0)) {
                    double others = allSet
                            ? 0
                            : stop
                                    + StintPlan.best(left, stints - 2, compounds, stop)
                                            .cost();
                    for (int one = 0; one < 3; one++) {
                        double two = sum(compounds.get(one), first) + sum(compounds.get((one + 1) % 3), second);
                        double other = sum(compounds.get(one), first) + sum(compounds.get((one + 2) % 3), second);
                        best = Math.min(best, Math.min(two, other) + stop + others);
                    }
                }
            }
        }

        assertThat(best).isCloseTo(loss, within(1e-9));
    }

    @Test
    void theLengthsOfTheBestTwoStintsAreThePublishedOnes() {
        StintPlan plan = StintPlan.best(55, 2, List.of(compound(0.5, 0.05), compound(0, 0.09)), 22.5);

        assertThat(plan.stints().stream().map(StintPlan.Stint::games)).containsExactlyInAnyOrder(32, 23);
        assertThat(plan.cost()).isCloseTo(86.07, within(1e-9));
    }

    private static double[] compound(double fresh, double perLap) {
        return IntStream.range(0, 55).mapToDouble(age -> fresh + perLap * age).toArray();
    }

    @Test
    void stintsAreTheBestOfAllSplits() {
        double[] loss = {0, 3, 1, 4, 1, 5, 9, 2, 6};
        double best = Double.POSITIVE_INFINITY;
        for (int first = 1; first <= 7; first++) {
            for (int second = 1; first + second <= 8; second++) {
                best = Math.min(best, sum(loss, first) + sum(loss, second) + sum(loss, 9 - first - second) + 2 * 1.5);
            }
        }

        assertThat(StintPlan.best(9, 3, List.of(loss), 1.5).cost()).isEqualTo(best);
    }

    private static double sum(double[] loss, int games) {
        return Arrays.stream(loss, 0, games).sum();
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> CyclePolicy.growingLoss(-1, new double[] {1}));
        assertThatIllegalArgumentException().isThrownBy(() -> CyclePolicy.growingLoss(1, new double[0]));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CyclePolicy.ageReplacement(new double[] {1}, 5, 1))
                .withMessageContaining("at most that after a failure");
        assertThatIllegalArgumentException().isThrownBy(() -> StintPlan.best(2, 3, List.of(new double[3]), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> ControlLimit.onPaths(new double[0][0], 1, 2, 1, 5));
    }
}
