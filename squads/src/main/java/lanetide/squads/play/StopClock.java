package lanetide.squads.play;

import lanetide.des.random.RandomStreams;
import lanetide.squads.model.Stops;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Counts a lane's frames down to its next stop. The number of frames is geometric with the given mean, drawn by
 * inversion: with u uniform on (0, 1] it is the least n of at least ln u / ln(1 - 1 / mean).
 */
final class StopClock {
    private final Stops stops;
    private final UniformRandomProvider luck;
    private long framesLeft;

    StopClock(Stops stops, RandomStreams streams, String key) {
        this.stops = stops;
        this.luck = streams.stream(key);
        this.framesLeft = drawnFrames();
    }

    /** A frame has been bowled; whether it brings a stop. */
    boolean ticks() {
        framesLeft--;
        if (framesLeft > 0) {
            return false;
        }
        framesLeft = drawnFrames();
        return true;
    }

    /** Time of the work on a stop (ms). */
    long workMs() {
        double sigma = StrictMath.sqrt(StrictMath.log1p(stops.spread() * stops.spread()));
        double normal = ZigguratSampler.NormalizedGaussian.of(luck).sample();
        return Math.round(stops.workMs() * StrictMath.exp(sigma * normal - sigma * sigma / 2));
    }

    private long drawnFrames() {
        if (stops.everyFrames() == Double.POSITIVE_INFINITY) {
            return Long.MAX_VALUE;
        }
        if (stops.everyFrames() == 1) {
            return 1;
        }
        double uniform = 1 - luck.nextDouble();
        return Math.max(1, (long) Math.ceil(StrictMath.log(uniform) / StrictMath.log1p(-1 / stops.everyFrames())));
    }
}
