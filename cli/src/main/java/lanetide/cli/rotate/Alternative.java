package lanetide.cli.rotate;

import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.check.Walk;
import lanetide.squads.rotation.design.SearchObjective;

/**
 * A rotation that a squad could have.
 *
 * @param label the design's name
 * @param description the design in words
 * @param rotation the rotation over all pairs
 * @param report what it does
 * @param walk how far groups walk
 * @param cost its figure under the objective, the pairs in use taken as one row
 */
public record Alternative(
        RotationDesigns.Label label,
        String description,
        Rotation rotation,
        RotationReport report,
        Walk walk,
        double cost) {

    /**
     * Looks a rotation over.
     *
     * @param label the design's name
     * @param description the design in words
     * @param inner the rotation over the pairs in use
     * @param pairs the pairs
     * @param objective what rotations are ranked by
     * @return the alternative
     */
    static Alternative of(
            RotationDesigns.Label label, String description, Rotation inner, PairRow pairs, SearchObjective objective) {
        Rotation rotation = pairs.overAll(inner);
        return new Alternative(
                label,
                description,
                rotation,
                RotationReport.of(rotation),
                Walk.of(rotation, pairs.leftLanes()),
                objective.cost(inner));
    }
}
