package lanetide.squads.equipment;

import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.model.Laws;

/**
 * The laws and the grid an event is played under. Immutable, so that all playings share it.
 *
 * @param grid the grid films are kept on
 * @param friction how slippery a contact is
 * @param split how oil parts between lane and ball while a ball rolls
 * @param lanesStay whether lanes stay as they are laid
 * @param carry what the pins do
 */
public record Physics(LaneGrid grid, FrictionModel friction, FilmSplit split, boolean lanesStay, PinCarry carry) {
    private static final Catalogue SHIPPED = Catalogue.shipped();

    /**
     * The usual grid and pins under some laws.
     *
     * @param laws the laws
     * @return the physics
     */
    public static Physics under(Laws laws) {
        return new Physics(LaneGrid.DEFAULT, laws.friction(), laws.splitInAShot(), laws.lanesStay(), new PinCarry());
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
                own -> SHIPPED.knownCovers(own).stream().map(this::knownContact).toList());
    }

    /**
     * A cover on the surface that bowlers know.
     *
     * @param cover the ball's shell
     * @return its contact with {@link Catalogue#REFERENCE_SURFACE}
     */
    public Contact knownContact(Coverstock cover) {
        return contact(cover, SHIPPED.surfaces().get(Catalogue.REFERENCE_SURFACE));
    }

    /**
     * A cover on a surface.
     *
     * @param cover the ball's shell
     * @param surface the lane
     * @return their contact
     */
    public Contact contact(Coverstock cover, LaneSurface surface) {
        return new Contact(BallSpec.of(cover), friction.between(surface, cover), split);
    }
}
