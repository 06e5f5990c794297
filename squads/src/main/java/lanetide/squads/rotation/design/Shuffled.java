package lanetide.squads.rotation.design;

import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.sampling.PermutationSampler;

/**
 * The pairs are drawn by lot for every game; every assignment of groups to pairs is equally likely. A yardstick for the
 * other designs. More games leave the draw of the earlier games as it was.
 *
 * @param seed the same seed gives the same draw
 */
public record Shuffled(long seed) implements RotationDesign {

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        PlanSize.requirePlayable(groups, pairs, games);
        UniformRandomProvider lot = new SplitMix64(seed);
        int[][] drawn = new int[games][];
        for (int game = 0; game < games; game++) {
            drawn[game] = PermutationSampler.natural(pairs);
            PermutationSampler.shuffle(lot, drawn[game]);
        }
        return Rotation.tabulate(groups, pairs, games, (game, group) -> drawn[game][group]);
    }
}
