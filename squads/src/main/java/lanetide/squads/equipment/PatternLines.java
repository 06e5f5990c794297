package lanetide.squads.equipment;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.HomeLines;
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

    private final Map<Player, Line> lines = new HashMap<>();
    private final Map<Player, LineFeel> feels = new HashMap<>();
    private final boolean handsShareLines;

    PatternLines(Event event, OilPattern pattern, Physics physics) {
        handsShareLines = pattern.isSymmetric();
        // Both hands of every kind, because windows are reported for either hand of the commonest kind of a style.
        List<Hand> hands = handsShareLines ? List.of(Hand.RIGHT) : List.of(Hand.values());
        OilFilm fresh = OilFilm.fresh(pattern, physics.grid());
        RowMarch march = new RowMarch(physics.grid());
        HomeLines homes = physics.homeLines(new LineFinder(march, physics.carry()), pattern);
        for (Squad squad : event.squads()) {
            for (Bowler bowler : squad.everybody()) {
                for (Hand hand : hands) {
                    StartingLines.players(bowler, hand, event, physics)
                            .forEach(kind -> lines.computeIfAbsent(
                                    kind, player -> homes.start(player, fresh).orElse(STRAIGHT_AT_POCKET)));
                }
            }
        }
        FeelFinder feelFinder = new FeelFinder(march);
        lines.forEach((player, line) -> feels.put(player, feelFinder.feel(player, fresh, line)));
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
