package lanetide.squads.rotation.design;

import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;

/**
 * A rule that sends every group to a lane pair in every game.
 *
 * <p>Groups, pairs and games are counted from zero. A pair is its position in the centre's list, right is towards
 * higher positions, and past the last pair the first one follows.
 */
public sealed interface RotationDesign
        permits Stay, Ring, Turning, Counter, RowComplete, Patterson, Explicit, Shuffled, Searched {

    /**
     * Draws up the rotation. With fewer groups than pairs some pairs stay empty.
     *
     * @param groups groups that bowl at the same time
     * @param pairs lane pairs in the rotation
     * @param games games each group bowls
     * @return the pair of every group in every game
     * @throws ImpossibleRotationException if {@code groups < 1}, {@code pairs < 1}, {@code games < 1}, {@code groups >
     *     pairs}, or the design cannot serve these numbers
     */
    Rotation plan(int groups, int pairs, int games);
}
