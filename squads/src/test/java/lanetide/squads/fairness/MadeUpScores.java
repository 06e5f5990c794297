package lanetide.squads.fairness;

import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Scores by formula: a bowler's skill and luck, which go with him, the worth of his seat, and noise that goes with
 * neither.
 */
final class MadeUpScores implements ScoreSource {
    private final double[] worthOfSeat;
    private final double[] skill;
    private final double luckPins;
    private final double noisePins;

    MadeUpScores(double[] worthOfSeat, double[] skill, double luckPins, double noisePins) {
        this.worthOfSeat = worthOfSeat;
        this.skill = skill;
        this.luckPins = luckPins;
        this.noisePins = noisePins;
    }

    @Override
    public double[] play(int[] bowlerAtSeat, boolean lanesChange, RandomStreams luck) {
        double[] scores = new double[bowlerAtSeat.length];
        for (int seat = 0; seat < scores.length; seat++) {
            int bowler = bowlerAtSeat[seat];
            scores[bowler] = skill[bowler] + luckPins * normal(luck, "luck/" + bowler);
            if (lanesChange) {
                scores[bowler] += worthOfSeat[seat] + noisePins * normal(luck, "noise/" + bowler + "/" + seat);
            }
        }
        return scores;
    }

    private static double normal(RandomStreams streams, String key) {
        UniformRandomProvider stream = streams.stream(key);
        NormalizedGaussianSampler sampler = ZigguratSampler.NormalizedGaussian.of(stream);
        return sampler.sample();
    }
}
