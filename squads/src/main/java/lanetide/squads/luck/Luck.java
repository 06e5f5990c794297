package lanetide.squads.luck;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;

/**
 * A bowler's chance: his releases, his reading of the lane, the pins, his form, his fouls and his times. One object
 * serves one playing.
 */
public interface Luck {
    /**
     * The scatter of his release.
     *
     * @return draws of mean 0 and standard deviation 1
     */
    NormalizedGaussianSampler release();

    /**
     * His error in reading where a ball met the pins.
     *
     * @return draws of mean 0 and standard deviation 1
     */
    NormalizedGaussianSampler sight();

    /**
     * What the pins do.
     *
     * @return draws from 0 to 1
     */
    UniformRandomProvider pins();

    /**
     * How well he bowls in a game.
     *
     * @return draws of mean 0 and standard deviation 1, one a game
     */
    NormalizedGaussianSampler form();

    /**
     * Whether he steps over the line.
     *
     * @return draws from 0 to 1
     */
    UniformRandomProvider fouls();

    /**
     * How long he takes over his shots that count.
     *
     * @return a generator
     */
    UniformRandomProvider times();

    /**
     * How long he takes in practice.
     *
     * @return a generator
     */
    UniformRandomProvider practiceTimes();

    /**
     * Told before the first ball of every frame that counts, in order.
     *
     * @param game game from 1
     * @param frame frame from 1
     */
    void frame(int game, int frame);
}
