package lanetide.squads.recondition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lanetide.squads.fixture.ReadmeRow;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Known optima, with the laws of wear they were worked out for in place of the simulation. */
class PublishedFormsTest {
    private static final int SHORT_GAMES = 10_000;

    private static DoubleUnaryOperator weibull(double scale, double shape) {
        return age -> Math.exp(-Math.pow(age / scale, shape));
    }

    /**
     * Rows: ReliaWiki, "Optimum Replacement Time Example" (inputs; the `reliability` package prints 493.19 and 0.0035
     * for it), the form of E. Gutierrez-Miravete's lecture slides, and a third; the continuous optimum computed
     * independently from h(T) int R + R = cf / (cf - cp). With games as short as a ten-thousandth of the scale the
     * policy by whole games must come to it.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 5, 1000, 2.5, 493.0470, 0.00346204, 0.61435",
        "1, 10, 10, 3, 3.824555, 0.394935, 0.352669",
        "1, 5, 10, 2, 5.106552, 0.408524, 0.724090"
    })
    void weibullAgeReplacement(
            double planned, double failed, double scale, double shape, double age, double cost, double share) {
        double[] survival = shortGames(n -> weibull(SHORT_GAMES, shape).applyAsDouble(n));

        Optimum best = CyclePolicy.ageReplacement(survival, planned, failed);

        assertThat(best.games() / SHORT_GAMES * scale).isCloseTo(age, withinPercentage(0.05));
        ReadmeRow.says(
                "Weibull age replacement " + given(planned, failed, scale, shape) + ", by short games",
                number("%.6g", best.games() / SHORT_GAMES * scale));
        double costOfAge = best.costPerGame() * SHORT_GAMES / scale;
        assertThat(costOfAge).isCloseTo(cost, withinPercentage(0.05));
        double meanLife = scale * Math.exp(org.apache.commons.math3.special.Gamma.logGamma(1 + 1 / shape));
        assertThat(costOfAge / (failed / meanLife)).isCloseTo(share, withinPercentage(0.05));
    }

    private static String given(double... numbers) {
        return DoubleStream.of(numbers)
                .mapToObj(number -> number("%.1f", number).replaceFirst("\\.0$", ""))
                .collect(Collectors.joining(", ", "(", ")"));
    }

    private static String number(String format, double number) {
        return String.format(Locale.ROOT, format, number);
    }

    private static double[] shortGames(DoubleUnaryOperator byGame) {
        return IntStream.rangeClosed(1, 3 * SHORT_GAMES)
                .mapToDouble(byGame::applyAsDouble)
                .toArray();
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
        ReadmeRow.says(
                "by whole games, S(n) = exp(-(n/10)^3), 1 and 10",
                number("%.0f games, ", best.games()) + number("%.6f", best.costPerGame()));
    }

    /**
     * Barlow and Hunter 1960: T* = scale (cp / (cm (shape - 1)))^(1 / shape), in games as short as a ten-thousandth of
     * the scale.
     */
    @ParameterizedTest
    @CsvSource({"1, 1, 10, 2, 10, 0.2", "4, 1, 5, 2.5, 7.402143, 0.900640"})
    void minimalRepairAtAPowerLawRate(
            double planned, double repair, double scale, double shape, double age, double rate) {
        DoubleUnaryOperator gathered = n -> repair * Math.pow(n / SHORT_GAMES, shape);
        double[] lossByGame = shortGames(n -> gathered.applyAsDouble(n) - gathered.applyAsDouble(n - 1));

        Optimum best = CyclePolicy.growingLoss(planned, lossByGame);

        assertThat(best.games() / SHORT_GAMES * scale).isCloseTo(age, withinPercentage(0.05));
        ReadmeRow.says(
                "minimal repair " + given(planned, repair, scale, shape) + ", by short games",
                number("%.6g", best.games() / SHORT_GAMES * scale));
        assertThat(best.costPerGame() * SHORT_GAMES / scale).isCloseTo(rate, withinPercentage(0.01));
    }

    /** T* = sqrt(2 K / a), and a cost of sqrt(2 K a) a game. */
    @ParameterizedTest
    @CsvSource({"18, 1, 6, 6", "50, 1, 10, 10"})
    void linearGrowth(double renewal, double growth, double games, double cost) {
        double[] byGame =
                IntStream.range(0, 60).mapToDouble(g -> growth * (g + 0.5)).toArray();

        Optimum best = CyclePolicy.growingLoss(renewal, byGame);

        assertThat(best.games()).isEqualTo(games);
        assertThat(best.costPerGame()).isCloseTo(cost, within(1e-9));
        ReadmeRow.says("linear growth, K and a of " + given(renewal, growth), number("%.0f games", best.games()));
    }

    /**
     * What the simulation's paths are put through, fed with paths of a gamma process (J. M. van Noortwijk, Reliability
     * Engineering and System Safety 94, 2009) of shape 2 and scale 0.5. Its answers were computed independently from
     * the renewal equation m(x) = f(x) + integral of m(y) f(x - y) from 0 to x, where m is the density of visits to a
     * state below the control limit and f that of one game's wear.
     */
    @ParameterizedTest
    @CsvSource({"6, 0.14914, 6.750, 0.00168", "7.5, 0.13265, 8.250, 0.02358", "8, 0.13940, 8.750, 0.05495"})
    void aControlLimitOnDrawnPathsGivesWhatTheLawSays(double control, double cost, double games, double fails) {
        GammaDistribution wear = new GammaDistribution(new Well19937c(1), 2, 0.5);
        double[][] paths = new double[20_000][40];
        for (double[] path : paths) {
            double state = 0;
            for (int game = 0; game < path.length; game++) {
                state += wear.sample();
                path[game] = state;
            }
        }

        ControlLimit policy = ControlLimit.onPaths(paths, control, 10, 1, 5);

        assertThat(policy.costPerGame()).isCloseTo(cost, within(0.002));
        assertThat(policy.meanGames()).isCloseTo(games, within(0.05));
        assertThat(policy.failShare()).isCloseTo(fails, within(0.005));
        ReadmeRow.says(
                "control limit " + given(control).replaceAll("[()]", "")
                        + " (1 and 5) on 20 000 paths of a gamma process, shape 2, scale 0.5, limit 10",
                number("%.5f", policy.costPerGame()));
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> CyclePolicy.growingLoss(-1, new double[] {1}));
        assertThatIllegalArgumentException().isThrownBy(() -> CyclePolicy.growingLoss(1, new double[0]));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CyclePolicy.ageReplacement(new double[] {1}, 5, 1))
                .withMessageContaining("at most that after a failure");
        assertThatIllegalArgumentException().isThrownBy(() -> ControlLimit.onPaths(new double[0][0], 1, 2, 1, 5));
    }
}
