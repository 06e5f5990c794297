package lanetide.squads.equipment;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.bowler.LineFeel;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;

/** The lines that all kinds of bowlers of an event bring for one fresh pattern. Immutable. */
public final class PatternLines {
    /** Where no line meets the pocket, the bowler plays straight at it. */
    private static final Line STRAIGHT_AT_POCKET = new Line(PinCarry.POCKET_BOARD, 0);

    private static final LaneSurface REFERENCE = Catalogue.shipped().surfaces().get(Catalogue.REFERENCE_SURFACE);

    private final Map<Player, Line> lines = new HashMap<>();
    private final Map<Player, LineFeel> feels = new HashMap<>();
    private final boolean handsShareLines;

    PatternLines(Event event, OilPattern pattern, Physics physics) {
        handsShareLines = pattern.isSymmetric();
        // Both hands of every kind, because windows are reported for either hand of the commonest kind of a style.
        List<Hand> hands = handsShareLines ? List.of(Hand.RIGHT) : List.of(Hand.values());
        OilFilm fresh = OilFilm.fresh(pattern, physics.grid());
        RowMarch march = new RowMarch(physics.grid());
        LineFinder finder = new LineFinder(march, physics.carry());
        for (Squad squad : event.squads()) {
            for (Bowler bowler : squad.everybody()) {
                for (Hand hand : hands) {
                    StartingLines.players(bowler, hand, event, physics)
                            .forEach(kind -> lines.computeIfAbsent(
                                    kind, player -> startingLine(player, finder, fresh, physics)));
                }
            }
        }
        FeelFinder feelFinder = new FeelFinder(march);
        lines.forEach((player, line) -> feels.put(player, feelFinder.feel(player, fresh, line)));
    }

    /** His natural line on the surface bowlers know, moved two and one until it meets the pocket on this one. */
    private static Line startingLine(Player player, LineFinder finder, OilFilm fresh, Physics physics) {
        Player atHome = new Player(
                player.style(),
                player.spread(),
                player.hand(),
                physics.contact(player.contact().ball().cover(), REFERENCE));
        return finder.natural(atHome, fresh)
                .flatMap(line -> finder.moveToPocket(player, fresh, line))
                .orElse(STRAIGHT_AT_POCKET);
    }

    /**
     * The line of a player on the fresh pattern. Where the pattern is the same from both gutters, both hands share it.
     *
     * @param player a player of the event
     * @return his line
     * @throws IllegalArgumentException if no bowler of the event plays like this
     */
    public Line of(Player player) {
        return found(lines, player);
    }

    /**
     * What such a player knows of his balls on that line, from practice on the fresh pattern elsewhere.
     *
     * @param player a player of the event
     * @return what his balls do
     * @throws IllegalArgumentException if no bowler of the event plays like this
     */
    public LineFeel feel(Player player) {
        return found(feels, player);
    }

    private <T> T found(Map<Player, T> known, Player player) {
        Hand hand = handsShareLines ? Hand.RIGHT : player.hand();
        T found = known.get(new Player(player.style(), player.spread(), hand, player.contact()));
        if (found == null) {
            throw new IllegalArgumentException("no bowler of the event plays like " + player);
        }
        return found;
    }
}
