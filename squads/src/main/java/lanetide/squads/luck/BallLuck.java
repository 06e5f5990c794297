package lanetide.squads.luck;

import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** A stream for each purpose, used up ball by ball. */
record BallLuck(
        NormalizedGaussianSampler release,
        NormalizedGaussianSampler sight,
        UniformRandomProvider pins,
        NormalizedGaussianSampler form,
        UniformRandomProvider fouls,
        UniformRandomProvider times,
        UniformRandomProvider practiceTimes)
        implements Luck {
    BallLuck(RandomStreams streams, String key) {
        this(
                ZigguratSampler.NormalizedGaussian.of(streams.stream(key + "/release")),
                ZigguratSampler.NormalizedGaussian.of(streams.stream(key + "/sight")),
                streams.stream(key + "/pins"),
                ZigguratSampler.NormalizedGaussian.of(streams.stream(key + "/form")),
                streams.stream(key + "/fouls"),
                streams.stream(key + "/time"),
                streams.stream(key + "/practice-time"));
    }

    /** Goes on where the last frame left off. */
    @Override
    public void frame(int game, int frame) {}
}
