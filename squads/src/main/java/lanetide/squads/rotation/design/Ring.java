package lanetide.squads.rotation.design;

import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;

/**
 * Everybody moves the same way round the house.
 *
 * <p>Common practice, and the worst design for who follows whom: every group inherits the oil of the same group at
 * every move.
 *
 * @param step pairs moved at each move; positive to the right, negative to the left
 * @param everyGames games bowled on a pair before the next move
 */
public record Ring(int step, int everyGames) implements RotationDesign {

    /**
     * A ring.
     *
     * @throws ImpossibleRotationException if {@code step == 0} or {@code everyGames < 1}
     */
    public Ring {
        Steps.requireNonZero(step);
        if (everyGames < 1) {
            throw new ImpossibleRotationException(
                    "number of games between moves", everyGames, "at least 1", "Write 1 to move after every game.");
        }
    }

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        PlanSize.requireStepMoves(step, pairs);
        return Rotation.tabulate(groups, pairs, games, (game, group) -> pairAt(game, group, pairs));
    }

    private int pairAt(int game, int group, int pairs) {
        return Math.floorMod(group + (long) step * (game / everyGames), pairs);
    }
}
