package lanetide.squads.rotation;

import java.util.List;

/**
 * Several groups are sent to one pair in the same game.
 *
 * @param game game, counted from zero
 * @param pair pair, counted from zero
 * @param groups the groups in ascending order, at least two
 */
public record Collision(int game, int pair, List<Integer> groups) implements RotationFinding {

    /** A collision; the groups are copied. */
    public Collision {
        groups = List.copyOf(groups);
    }
}
