package lanetide.squads.model;

import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.ValueSet;

/**
 * The laws an event is played under.
 *
 * @param friction how slippery a contact is
 * @param split how oil parts between lane and ball
 * @param lanesStay whether lanes stay as they are laid, whatever is rolled over them
 * @param values the values of what is not known
 */
public record Laws(FrictionModel friction, SplitModel split, boolean lanesStay, ValueSet values) {
    /** The laws used where a scenario says nothing; their reasons stand in the oil model's README. */
    public static final Laws USUAL = new Laws(FrictionModel.MIXED_LUBRICATION, SplitModel.FORWARD_ROLL);

    /**
     * Laws as a scenario names them: where it names none for the split, lanes stay as they are laid.
     *
     * @param friction how slippery a contact is
     * @param split how oil parts between lane and ball
     */
    public Laws(FrictionModel friction, SplitModel split) {
        this(friction, split, split == SplitModel.NONE, ValueSet.USUAL);
    }

    /**
     * The same on lanes that stay as they are laid.
     *
     * @return the laws
     */
    public Laws withLanesThatStay() {
        return new Laws(friction, split, true, values);
    }

    /**
     * The same laws with other values.
     *
     * @param others the values
     * @return the laws
     */
    public Laws withValues(ValueSet others) {
        return new Laws(friction, split, lanesStay, others);
    }

    /**
     * The oil model under these laws.
     *
     * @return the model
     */
    public OilModel oilModel() {
        return new OilModel(friction, splitInAShot(), values);
    }

    /**
     * How oil parts between lane and ball while a ball rolls. A ball takes up oil and lays it down again on every lane;
     * one that stays as it is laid is found by the next ball as this one found it. Without that it would be another
     * ball: a dry one, that turns elsewhere.
     *
     * @return the law that is named, or the usual one where none is
     */
    private SplitModel splitInAShot() {
        return split == SplitModel.NONE ? USUAL.split() : split;
    }
}
