package lanetide.des;

import java.util.function.DoubleSupplier;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** Laws of service times. */
enum ServiceLaw {
    EXPONENTIAL,
    FIXED,
    /** The sum of two equal exponentials: squared coefficient of variation 1/2. */
    ERLANG_2,
    /** Uniform from 0 to twice the mean. */
    UNIFORM,
    /** One of two exponentials with balanced means: squared coefficient of variation 4. */
    HYPEREXPONENTIAL;

    /** Probability of the shorter exponential: (1 + sqrt((c2 - 1) / (c2 + 1))) / 2 with c2 = 4. */
    private static final double SHORTER = (1 + Math.sqrt(0.6)) / 2;

    DoubleSupplier sampler(UniformRandomProvider random, double mean) {
        ContinuousSampler exponential = ZigguratSampler.Exponential.of(random, mean);
        return switch (this) {
            case EXPONENTIAL -> exponential::sample;
            case FIXED -> () -> mean;
            case ERLANG_2 -> () -> (exponential.sample() + exponential.sample()) / 2;
            case UNIFORM -> () -> 2 * mean * random.nextDouble();
            case HYPEREXPONENTIAL ->
                () -> {
                    double share = random.nextDouble() < SHORTER ? SHORTER : 1 - SHORTER;
                    return exponential.sample() / (2 * share);
                };
        };
    }
}
