package lanetide.oilflow.unknown;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.Levelling;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.friction.FrictionValues;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.pocket.PinCarry;

/**
 * The oil model under a set of values. Shipped surfaces, covers and styles change with the set; what a scenario states
 * of its own does not, since it is known there. Immutable.
 */
public final class OilModel {
    /** The unknowns of the oil model. */
    public static final Unknowns UNKNOWNS = new Unknowns(OilModel.class);

    /** From this value of its unknown on the exponential law of friction holds. */
    private static final double OTHER_LAW_FROM = 0.5;

    private static final Catalogue SHIPPED = Catalogue.shipped();
    private static final PinCarry PINS = new PinCarry();

    private final ValueSet set;
    private final FrictionModel friction;
    private final FrictionValues frictionValues;
    private final FilmSplit split;
    private final PinCarry carry;
    private final Catalogue catalogue;

    /**
     * The model.
     *
     * @param friction how slippery a contact is; where it is the usual law, the set may hold another
     * @param split how oil parts between lane and ball
     * @param set the values
     */
    public OilModel(FrictionModel friction, SplitModel split, ValueSet set) {
        this.set = set;
        boolean other = friction == FrictionModel.MIXED_LUBRICATION && value("friction-law") >= OTHER_LAW_FROM;
        this.friction = other ? FrictionModel.EXPONENTIAL_STRIBECK : friction;
        this.frictionValues = new FrictionValues(value("fluid-friction"), value("roughness-share"));
        this.split = split.law(value("coverage"));
        this.carry = set.isUsual() ? PINS : PINS.striking(value("carry-best"), value("carry-fall"));
        this.catalogue = set.isUsual()
                ? SHIPPED
                : new Catalogue(
                        changed(SHIPPED.surfaces(), this::surface),
                        changed(SHIPPED.covers(), this::cover),
                        changed(SHIPPED.styles(), this::style));
    }

    private double value(String id) {
        return set.of(UNKNOWNS.of(id));
    }

    /**
     * The shipped surfaces, covers and styles under these values.
     *
     * @return the catalogue
     */
    public Catalogue catalogue() {
        return catalogue;
    }

    /**
     * A ball on a lane.
     *
     * @param cover the ball's shell
     * @param surface the lane
     * @return their contact
     */
    public Contact contact(Coverstock cover, LaneSurface surface) {
        return new Contact(
                BallSpec.of(cover), friction.between(surface, cover, frictionValues), split, value("towel-share"));
    }

    /**
     * How films level while lanes rest.
     *
     * @return the oil's levelling
     */
    public Levelling levelling() {
        return Levelling.usual(value("viscosity"));
    }

    /**
     * What the pins do.
     *
     * @return the pins
     */
    public PinCarry carry() {
        return carry;
    }

    /**
     * A pattern as a machine lays it.
     *
     * @param pattern the pattern
     * @return the same, but where only a sheet is known and it says nothing of the fall along the lane, with the fall
     *     of this set
     */
    public OilPattern laid(OilPattern pattern) {
        return pattern instanceof SheetPattern sheet && sheet.fallsAsUsual()
                ? sheet.falling(value("head-decay"), value("end-floor"))
                : pattern;
    }

    /**
     * A surface under these values.
     *
     * @param own a scenario's surface
     * @return the changed one if it is a shipped one, else itself
     */
    public LaneSurface of(LaneSurface own) {
        return own.equals(SHIPPED.surfaces().get(own.id()))
                ? catalogue.surfaces().get(own.id())
                : own;
    }

    /**
     * A cover under these values.
     *
     * @param own a scenario's cover
     * @return the changed one if it is a shipped one, else itself
     */
    public Coverstock of(Coverstock own) {
        return own.equals(SHIPPED.covers().get(own.id())) ? catalogue.covers().get(own.id()) : own;
    }

    /**
     * A style under these values.
     *
     * @param own a scenario's style
     * @return the changed one if it is a shipped one, else itself
     */
    public PlayingStyle of(PlayingStyle own) {
        return own.equals(SHIPPED.styles().get(own.id())) ? catalogue.styles().get(own.id()) : own;
    }

    private static <T> Map<String, T> changed(Map<String, T> shipped, UnaryOperator<T> change) {
        Map<String, T> all = new TreeMap<>();
        shipped.forEach((id, one) -> all.put(id, change.apply(one)));
        return all;
    }

    /** The reference surface has the dry friction of the set, and the others lie above it in their proportion. */
    private LaneSurface surface(LaneSurface usual) {
        double reference = SHIPPED.surfaces().get(Catalogue.REFERENCE_SURFACE).dryFriction();
        double above = 1 + value("surface-step") * (usual.dryFriction() / reference - 1);
        return new LaneSurface(usual.id(), value("dry-friction") * above, usual.roughnessUm(), usual.source());
    }

    private Coverstock cover(Coverstock usual) {
        double odds = value("flare-odds") * usual.flareOverlap() / (1 - usual.flareOverlap());
        return new Coverstock(
                usual.id(),
                1 + value("cover-step") * (usual.frictionFactor() - 1),
                usual.roughnessUm(),
                odds / (1 + odds),
                usual.absorptionS() * value("absorption"),
                usual.source(),
                usual.core());
    }

    private PlayingStyle style(PlayingStyle usual) {
        Release release = usual.release();
        return new PlayingStyle(
                usual.id(),
                new Release(
                        release.speedMps(),
                        release.spinRadps(),
                        release.axisRotationRad() + StrictMath.toRadians(value("axis-" + usual.id())),
                        release.axisTiltRad()),
                usual.naturalLaunchRad() + StrictMath.toRadians(value("launch-" + usual.id())),
                usual.source());
    }
}
