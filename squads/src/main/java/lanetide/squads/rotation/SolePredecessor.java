package lanetide.squads.rotation;

/**
 * Whenever a group takes over a pair from another group, it is the same one, at least twice.
 *
 * @param group the group that follows, counted from zero
 * @param predecessor the group it always follows, counted from zero
 * @param times how often, at least 2
 */
public record SolePredecessor(int group, int predecessor, int times) implements RotationFinding {}
