package lanetide.squads.rotation;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Several groups are sent to one pair in the same game.
 *
 * @param game game, counted from zero
 * @param pair pair, counted from zero
 * @param groups the groups in ascending order, at least two
 */
public record Collision(int game, int pair, List<Integer> groups) implements RotationFinding {

    /** The code of every collision. */
    public static final String CODE = "rotation-collision";

    /** A collision; the groups are copied. */
    public Collision {
        groups = List.copyOf(groups);
    }

    @Override
    public String code() {
        return CODE;
    }

    @Override
    public String sentence(RotationNames names) {
        String together = groups.stream().map(names.group()::apply).collect(Collectors.joining(" and "));
        return "Game " + (game + 1) + ": " + together + " are sent to "
                + names.pair().apply(pair) + " together.";
    }
}
