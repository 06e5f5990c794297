package lanetide.squads.rotation;

/** The checks every design makes on the numbers it is asked for. */
public final class PlanSize {

    private PlanSize() {}

    /**
     * Checks the numbers of a rotation.
     *
     * @param groups groups that bowl at the same time
     * @param pairs lane pairs in the rotation
     * @param games games each group bowls
     * @throws ImpossibleRotationException if {@code groups < 1}, {@code pairs < 1}, {@code games < 1} or {@code groups
     *     > pairs}
     */
    public static void requirePlayable(int groups, int pairs, int games) {
        requireAtLeastOne("number of groups", groups);
        requireAtLeastOne("number of pairs", pairs);
        requireAtLeastOne("number of games", games);
        if (groups > pairs) {
            throw new ImpossibleRotationException(
                    "number of groups",
                    groups,
                    "at most the number of pairs (" + pairs + ")",
                    "Add lane pairs, put more bowlers in a group, or split the groups into more squads.");
        }
    }

    /**
     * Checks that a step leads to another pair.
     *
     * @param step pairs moved at each move
     * @param pairs lane pairs in the rotation
     * @throws ImpossibleRotationException if {@code pairs < 1} or {@code step} is a multiple of {@code pairs}
     */
    public static void requireStepMoves(int step, int pairs) {
        requireAtLeastOne("number of pairs", pairs);
        if (step % pairs == 0) {
            throw new ImpossibleRotationException(
                    "step",
                    step,
                    "no multiple of the number of pairs (" + pairs + ")",
                    "Every group would end on its own pair: choose another step, or let the groups stay.");
        }
    }

    private static void requireAtLeastOne(String what, int value) {
        if (value < 1) {
            throw new ImpossibleRotationException(what, value, "at least 1", "Check the squad's entry.");
        }
    }
}
