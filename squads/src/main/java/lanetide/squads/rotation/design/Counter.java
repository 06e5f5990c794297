package lanetide.squads.rotation.design;

import java.util.List;
import lanetide.squads.rotation.Collision;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;

/**
 * Neighbouring groups move opposite ways after every game: groups that start on an odd position (the second, fourth,
 * ... pair of the list) move right, the others left.
 *
 * <p>The pair-level form of "left-lane players move left, right-lane players move right" (common practice, no source).
 * With an even number of pairs no two groups ever land on one pair; with an odd number they soon do.
 *
 * @param step pairs moved after each game; positive sends the odd positions right, negative sends them left
 */
public record Counter(int step) implements RotationDesign {

    /**
     * A counter-rotation.
     *
     * @throws ImpossibleRotationException if {@code step == 0}
     */
    public Counter {
        Steps.requireNonZero(step);
    }

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        PlanSize.requireStepMoves(step, pairs);
        Rotation rotation = Rotation.tabulate(groups, pairs, games, (game, group) -> pairAt(game, group, pairs));
        requireNoCollision(rotation);
        return rotation;
    }

    private int pairAt(int game, int group, int pairs) {
        long signedStep = group % 2 == 1 ? step : -(long) step;
        return Math.floorMod(group + signedStep * game, pairs);
    }

    private static void requireNoCollision(Rotation rotation) {
        List<Collision> collisions = rotation.collisions();
        if (!collisions.isEmpty()) {
            Collision first = collisions.get(0);
            throw new ImpossibleRotationException(
                    "number of pairs",
                    rotation.pairs(),
                    "even when groups move opposite ways",
                    "Game " + (first.game() + 1) + ": group " + (first.groups().get(0) + 1) + " and group "
                            + (first.groups().get(1) + 1) + " are sent to pair " + (first.pair() + 1) + " together."
                            + " Leave one pair out, or let everybody move the same way.");
        }
    }
}
