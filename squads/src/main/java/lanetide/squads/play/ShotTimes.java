package lanetide.squads.play;

import lanetide.squads.model.PaceOfPlay;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * How long one bowler takes over his shots: log-normal times about the means of the pace and his tempo. With mean m and
 * standard deviation c m, the logarithm has the variance s^2 = ln(1 + c^2) and the mean ln m - s^2 / 2 (N. L. Johnson,
 * S. Kotz and N. Balakrishnan, "Continuous Univariate Distributions", volume 1, 1994).
 */
final class ShotTimes {
    private final PaceOfPlay pace;
    private final double tempo;
    private final double sigma;
    private final NormalizedGaussianSampler luck;

    ShotTimes(PaceOfPlay pace, double tempo, UniformRandomProvider stream) {
        this.pace = pace;
        this.tempo = tempo;
        this.sigma = StrictMath.sqrt(StrictMath.log1p(pace.spread() * pace.spread()));
        this.luck = ZigguratSampler.NormalizedGaussian.of(stream);
    }

    /** From the lane and the bowler being free to the release of a first ball (ms). */
    long firstShotMs() {
        return drawn(pace.firstShotMs());
    }

    /** From the ball's return to the release of the next ball (ms). */
    long spareShotMs() {
        return drawn(pace.spareShotMs());
    }

    private long drawn(long meanMs) {
        double factor = sigma == 0 ? 1 : StrictMath.exp(sigma * luck.sample() - sigma * sigma / 2);
        return Math.round(meanMs * tempo * factor);
    }
}
