package lanetide.squads.equipment;

import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.oilflow.unknown.OilModel;
import lanetide.squads.model.Laws;

/**
 * The laws and the grid an event is played under. Immutable, so that all playings share it.
 *
 * @param grid the grid films are kept on
 * @param model the oil model under a set of values
 * @param lanesStay whether lanes stay as they are laid
 */
public record Physics(LaneGrid grid, OilModel model, boolean lanesStay) {
    /**
     * The usual grid under some laws.
     *
     * @param laws the laws
     * @return the physics
     */
    public static Physics under(Laws laws) {
        return new Physics(LaneGrid.DEFAULT, laws.oilModel(), laws.lanesStay());
    }

    /**
     * The same on lanes that stay as they are laid.
     *
     * @return the physics
     */
    public Physics withLanesThatStay() {
        return new Physics(grid, model, true);
    }

    /**
     * What the pins do.
     *
     * @return the pins
     */
    public PinCarry carry() {
        return model.carry();
    }

    /**
     * The home lines on a pattern, known with the shipped reference ball and surface under these laws.
     *
     * @param finder finds the lines to the pocket
     * @param pattern the pattern
     * @return the home lines; one object serves one thread
     */
    public HomeLines homeLines(LineFinder finder, OilPattern pattern) {
        return new HomeLines(
                finder,
                pattern,
                own -> model.catalogue().knownCovers(own).stream()
                        .map(this::knownContact)
                        .toList());
    }

    /**
     * A cover on the surface that bowlers know.
     *
     * @param cover the ball's shell
     * @return its contact with {@link Catalogue#REFERENCE_SURFACE}
     */
    public Contact knownContact(Coverstock cover) {
        return contact(cover, model.catalogue().surfaces().get(Catalogue.REFERENCE_SURFACE));
    }

    /**
     * A cover on a surface.
     *
     * @param cover the ball's shell
     * @param surface the lane
     * @return their contact
     */
    public Contact contact(Coverstock cover, LaneSurface surface) {
        return model.contact(cover, surface);
    }
}
