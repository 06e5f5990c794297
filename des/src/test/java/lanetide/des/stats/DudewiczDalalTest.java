package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.GaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DudewiczDalalTest {

    /** The table of A. M. Law, "Simulation Modeling and Analysis", section 10.4, for 20 first replications. */
    @ParameterizedTest(name = "best of {0}: {1} at 90 %, {2} at 95 %")
    @CsvSource({"2, 1.896, 2.452", "3, 2.342, 2.872", "4, 2.583, 3.101", "5, 2.747, 3.258", "6, 2.870, 3.377"})
    void theConstantsAreThoseOfTheTable(int systems, double at90, double at95) {
        assertThat(DudewiczDalal.of(systems, 20, 0.90).h1()).isCloseTo(at90, within(5e-4));
        assertThat(DudewiczDalal.of(systems, 20, 0.95).h1()).isCloseTo(at95, within(5e-4));
    }

    @Test
    void replicationsFollowFromVarianceAndLead() {
        DudewiczDalal procedure = new DudewiczDalal(20, 2.747);
        assertThat(procedure.replicationsNeeded(4, 1)).isEqualTo((int) Math.ceil(2.747 * 2.747 * 4));
        assertThat(procedure.replicationsNeeded(0, 1)).isEqualTo(21);
    }

    /** The worst case: one of three, with unequal variances, is ahead by just the lead that matters. */
    @Test
    void theBestIsChosenAsOftenAsPromised() {
        DudewiczDalal procedure = DudewiczDalal.of(3, 10, 0.90);
        UniformRandomProvider random = new RandomStreams(20261126).stream("systems");
        int trials = 4_000;
        int right = 0;
        for (int trial = 0; trial < trials; trial++) {
            double best = judged(procedure, random, 0, 2);
            boolean isBest = best < judged(procedure, random, 1, 1) && best < judged(procedure, random, 1, 3);
            right += isBest ? 1 : 0;
        }
        double standardError = Math.sqrt(0.9 * 0.1 / trials);
        assertThat((double) right / trials).isBetween(0.9 - 3 * standardError, 0.9 + 3 * standardError);
    }

    private static double judged(DudewiczDalal procedure, UniformRandomProvider random, double mean, double deviation) {
        ContinuousSampler normal = GaussianSampler.of(ZigguratSampler.NormalizedGaussian.of(random), mean, deviation);
        Tally first = new Tally();
        normal.samples(procedure.firstStage()).forEach(first::add);
        Tally rest = new Tally();
        int needed = procedure.replicationsNeeded(first.variance(), 1);
        normal.samples(needed - procedure.firstStage()).forEach(rest::add);
        return procedure.weightedMean(first, rest, 1);
    }

    @Test
    void whatCannotBePromisedIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> DudewiczDalal.of(1, 20, 0.9));
        assertThatIllegalArgumentException().isThrownBy(() -> DudewiczDalal.of(2, 1, 0.9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DudewiczDalal.of(4, 20, 0.25))
                .withMessage("probability is 0.25, but must lie between 0.25, that of a blind choice, and 1");
        DudewiczDalal procedure = new DudewiczDalal(20, 2);
        assertThatIllegalArgumentException().isThrownBy(() -> procedure.replicationsNeeded(1, 0));
        Tally tooFew = new Tally();
        tooFew.add(1);
        tooFew.add(2);
        assertThatIllegalArgumentException().isThrownBy(() -> procedure.weightedMean(tooFew, tooFew, 1));
    }
}
