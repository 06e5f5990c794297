package lanetide.squads.model;

import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;

/**
 * The laws an event is played under.
 *
 * @param friction how slippery a contact is
 * @param split how oil parts between lane and ball
 */
public record Laws(FrictionModel friction, SplitModel split) {
    /** The laws used where a scenario says nothing; their reasons stand in the oil model's README. */
    public static final Laws USUAL = new Laws(FrictionModel.MIXED_LUBRICATION, SplitModel.FORWARD_ROLL);
}
