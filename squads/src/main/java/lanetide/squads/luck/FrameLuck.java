package lanetide.squads.luck;

import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * A stream a game, of which every frame takes the same number of draws to seed its own generators. What happens in one
 * frame changes the luck of no other.
 */
final class FrameLuck implements Luck {
    private final RandomStreams streams;
    private final String key;
    private final NormalizedGaussianSampler form;
    private final UniformRandomProvider times;
    private final UniformRandomProvider practiceTimes;
    private UniformRandomProvider source;
    private NormalizedGaussianSampler release;
    private NormalizedGaussianSampler sight;
    private UniformRandomProvider pins;
    private UniformRandomProvider fouls;

    FrameLuck(RandomStreams streams, String key) {
        this.streams = streams;
        this.key = key;
        this.form = ZigguratSampler.NormalizedGaussian.of(streams.stream(key + "/form"));
        this.times = streams.stream(key + "/time");
        this.practiceTimes = streams.stream(key + "/practice-time");
        this.source = streams.stream(key + "/practice");
        renew();
    }

    @Override
    public NormalizedGaussianSampler release() {
        return release;
    }

    @Override
    public NormalizedGaussianSampler sight() {
        return sight;
    }

    @Override
    public UniformRandomProvider pins() {
        return pins;
    }

    @Override
    public NormalizedGaussianSampler form() {
        return form;
    }

    @Override
    public UniformRandomProvider fouls() {
        return fouls;
    }

    @Override
    public UniformRandomProvider times() {
        return times;
    }

    @Override
    public UniformRandomProvider practiceTimes() {
        return practiceTimes;
    }

    @Override
    public void frame(int game, int frame) {
        if (frame == 1) {
            source = streams.stream(key + "/game/" + game);
        }
        renew();
    }

    private void renew() {
        release = ZigguratSampler.NormalizedGaussian.of(generator());
        sight = ZigguratSampler.NormalizedGaussian.of(generator());
        pins = generator();
        fouls = generator();
    }

    private UniformRandomProvider generator() {
        return new XoShiRo256PlusPlus(source.nextLong(), source.nextLong(), source.nextLong(), source.nextLong());
    }
}
