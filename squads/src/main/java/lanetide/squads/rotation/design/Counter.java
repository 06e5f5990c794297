package lanetide.squads.rotation.design;

import java.util.List;
import java.util.OptionalInt;
import lanetide.squads.rotation.Collision;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationCheck;
import org.apache.commons.math3.util.ArithmeticUtils;

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

    @Override
    public String describe() {
        return "After every game the groups that started on the 2nd, 4th, 6th ... pair move " + Steps.inWords(step)
                + " and the others " + Steps.inWords(-(long) step) + ".";
    }

    @Override
    public OptionalInt maxGamesWithoutRepeat(int pairs) {
        PlanSize.requireStepMoves(step, pairs);
        return OptionalInt.of(pairs / ArithmeticUtils.gcd(step, pairs));
    }

    private int pairAt(int game, int group, int pairs) {
        long signedStep = group % 2 == 1 ? step : -(long) step;
        return Math.floorMod(group + signedStep * game, pairs);
    }

    private static void requireNoCollision(Rotation rotation) {
        List<Collision> collisions = RotationCheck.collisions(rotation);
        if (!collisions.isEmpty()) {
            throw new ImpossibleRotationException(
                    "number of pairs",
                    rotation.pairs(),
                    "even when groups move opposite ways",
                    collisions.get(0).sentence() + " Leave one pair out, or let everybody move the same way.");
        }
    }
}
