package lanetide.squads.rotation.design;

import java.util.ArrayList;
import java.util.List;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;

/**
 * Everybody moves along, and turns back at either end of the house over the pairs that were left out, so that nobody
 * ever walks past more than {@code step} pairs.
 *
 * <p>With 2 pairs a move: 1, 3, 5, ... to the end, then back over ..., 6, 4, 2. Seen from a group it is one closed
 * round through all pairs; with a group on every pair each follows the same group at every move, as in a {@link Ring}.
 *
 * @param step the longest move in pairs, even, so that the round closes where it began
 */
public record Turning(int step) implements RotationDesign {

    /**
     * A round that turns back at the ends.
     *
     * @throws ImpossibleRotationException if {@code step < 2} or {@code step} is odd
     */
    public Turning {
        if (step < 2 || step % 2 != 0) {
            throw new ImpossibleRotationException(
                    "step",
                    step,
                    "even and at least 2 where groups turn back at the end",
                    "Write 2; with an odd step two groups would meet on the way back.");
        }
    }

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        PlanSize.requirePlayable(groups, pairs, games);
        List<Integer> round = round(pairs);
        return Rotation.tabulate(
                groups, pairs, games, (game, group) -> round.get((round.indexOf(group) + game) % pairs));
    }

    /** The pairs in the order a group visits them: up the first lane of every step, down the next, up, down. */
    private List<Integer> round(int pairs) {
        requireRoom(pairs);
        List<Integer> round = new ArrayList<>(pairs);
        for (int first = 0; first < step; first++) {
            List<Integer> run = new ArrayList<>();
            for (int pair = first; pair < pairs; pair += step) {
                run.add(first % 2 == 0 ? run.size() : 0, pair);
            }
            round.addAll(run);
        }
        return round;
    }

    private void requireRoom(int pairs) {
        if (step >= pairs) {
            throw new ImpossibleRotationException(
                    "step",
                    step,
                    "below the number of pairs (" + pairs + ") where groups turn back at the end",
                    "Choose a smaller step, or let the groups stay.");
        }
    }
}
