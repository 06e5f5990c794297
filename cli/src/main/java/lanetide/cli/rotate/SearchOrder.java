package lanetide.cli.rotate;

import java.util.function.IntConsumer;
import lanetide.squads.rotation.design.RotationSearch;

/**
 * That a rotation is to be searched for.
 *
 * @param seed same seed, same rotation
 * @param onRound told after each round how many are done, over the searches for all squads
 */
public record SearchOrder(long seed, IntConsumer onRound) {

    /** The order for one more search, after those that are done. */
    SearchOrder after(int searches) {
        return new SearchOrder(seed, rounds -> onRound.accept(searches * RotationSearch.ROUNDS + rounds));
    }
}
