package lanetide.cli.scenario.notice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Level;

/** Collects what an answer rests on and the scenario does not state. */
public final class Assumptions {
    private final Set<Assumption> assumptions = new LinkedHashSet<>();

    /** None yet. */
    public Assumptions() {}

    /** Adds an assumption; the same one is told once. */
    public void add(String name, String value, String source) {
        assumptions.add(new Assumption(name, value, source));
    }

    /**
     * What answers about some kinds of bowlers rest on.
     *
     * @param surfaces lane surfaces
     * @param styles playing styles
     * @param levels levels of skill
     * @param covers ball covers
     * @return one assumption for each, in the order given
     */
    public static List<Assumption> of(
            Collection<LaneSurface> surfaces,
            Collection<PlayingStyle> styles,
            Collection<Level> levels,
            Collection<Coverstock> covers) {
        Assumptions assumptions = new Assumptions();
        surfaces.forEach(assumptions::addSurface);
        styles.forEach(assumptions::addStyle);
        levels.forEach(assumptions::addLevel);
        covers.forEach(assumptions::addCover);
        return assumptions.list();
    }

    /** Adds the surface, styles, levels and covers that an event uses, each once, in alphabetical order. */
    public void addNamesOf(Event event) {
        addSurface(event.centre().surface());
        each(event, Bowler::style, PlayingStyle::id, this::addStyle);
        each(event, Bowler::level, Level::id, this::addLevel);
        each(event, Bowler::cover, Coverstock::id, this::addCover);
        each(event, Bowler::spareCover, Coverstock::id, this::addCover);
    }

    /** Adds a surface and what is known of it. */
    public void addSurface(LaneSurface surface) {
        add("surface " + surface.id(), "dry friction " + surface.dryFriction(), surface.source());
    }

    private void addStyle(PlayingStyle style) {
        add("style " + style.id(), words(style.release()), style.source());
    }

    private void addLevel(Level level) {
        add(
                "level " + level.id(),
                Range.round(arrowsBoards(level)) + " boards of scatter at the arrows",
                level.source());
    }

    private void addCover(Coverstock cover) {
        add(
                "cover " + cover.id(),
                "dry friction " + cover.frictionFactor() + " of a medium cover's, roughness " + cover.roughnessUm()
                        + " um",
                cover.source());
    }

    private static <T> void each(Event event, Function<Bowler, T> of, Function<T, String> id, Consumer<T> add) {
        Map<String, T> used = new TreeMap<>();
        event.squads()
                .forEach(squad ->
                        squad.everybody().forEach(bowler -> used.put(id.apply(of.apply(bowler)), of.apply(bowler))));
        used.values().forEach(add);
    }

    private static String words(Release release) {
        return Range.round(release.speedMps() / Measure.SPEED.usualUnit().toBase()) + " mph, "
                + Range.round(release.spinRadps() / Measure.REV_RATE.usualUnit().toBase()) + " rpm";
    }

    private static double arrowsBoards(Level level) {
        double atArrowsM =
                StrictMath.hypot(level.spread().laydownM(), level.spread().launchRad() * LaneGeometry.ARROWS_M);
        return atArrowsM / LaneGeometry.BOARD_M;
    }

    /** All of them, in the order in which they came. */
    public List<Assumption> list() {
        return new ArrayList<>(assumptions);
    }
}
