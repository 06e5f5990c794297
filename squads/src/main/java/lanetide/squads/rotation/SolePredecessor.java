package lanetide.squads.rotation;

/**
 * Whenever a group takes over a pair from another group, it is the same one, at least twice.
 *
 * @param group the group that follows, counted from zero
 * @param predecessor the group it always follows, counted from zero
 * @param times how often, at least 2
 */
public record SolePredecessor(int group, int predecessor, int times) implements RotationFinding {

    /** The code of every sole predecessor. */
    public static final String CODE = "rotation-sole-predecessor";

    @Override
    public String code() {
        return CODE;
    }

    @Override
    public String sentence(RotationNames names) {
        return "Each of the " + times + " times " + names.group().apply(group)
                + " takes over a pair from another group, it is from "
                + names.group().apply(predecessor) + ".";
    }
}
