package lanetide.squads.rotation;

/**
 * How often one group inherits the oil another has left: an arc of the carry-over graph.
 *
 * @param before the group that leaves the pair, counted from zero
 * @param after the next group to bowl on it, counted from zero
 * @param times how often, at least 1
 */
public record Following(int before, int after, int times) {}
