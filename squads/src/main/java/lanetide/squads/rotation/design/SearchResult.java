package lanetide.squads.rotation.design;

import lanetide.squads.rotation.Rotation;

/**
 * What a search for a rotation found.
 *
 * @param rotation the best rotation met, never worse than the start
 * @param cost its figure under the objective
 * @param start the classic design it began with
 * @param startCost the figure of that design
 * @param tries exchanges that were tried
 * @param reason why it ended
 */
public record SearchResult(
        Rotation rotation, double cost, RotationDesign start, double startCost, int tries, StopReason reason) {}
