package lanetide.squads.model;

import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;

/**
 * The laws an event is played under.
 *
 * @param friction how slippery a contact is
 * @param split how oil parts between lane and ball
 * @param lanesStay whether lanes stay as they are laid, whatever is rolled over them
 */
public record Laws(FrictionModel friction, SplitModel split, boolean lanesStay) {
    /** The laws used where a scenario says nothing; their reasons stand in the oil model's README. */
    public static final Laws USUAL = new Laws(FrictionModel.MIXED_LUBRICATION, SplitModel.FORWARD_ROLL);

    /**
     * Laws as a scenario names them: where it names none for the split, lanes stay as they are laid.
     *
     * @param friction how slippery a contact is
     * @param split how oil parts between lane and ball
     */
    public Laws(FrictionModel friction, SplitModel split) {
        this(friction, split, split == SplitModel.NONE);
    }

    /**
     * The same on lanes that stay as they are laid.
     *
     * @return the laws
     */
    public Laws withLanesThatStay() {
        return new Laws(friction, split, true);
    }

    /**
     * How oil parts between lane and ball while a ball rolls. A ball takes up oil and lays it down again on every lane;
     * one that stays as it is laid is found by the next ball as this one found it. Without that it would be another
     * ball: a dry one, that turns elsewhere.
     *
     * @return the law that is named, or the usual one where none is
     */
    public FilmSplit splitInAShot() {
        return split == SplitModel.NONE ? USUAL.split().law() : split.law();
    }
}
