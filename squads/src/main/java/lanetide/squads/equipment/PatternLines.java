package lanetide.squads.equipment;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
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

/**
 * The lines that bowlers bring for one fresh pattern. Each kind of bowler's is worked out once, when the first of them
 * comes, whichever thread asks.
 */
public final class PatternLines {
    /** Where no line meets the pocket, the bowler plays straight at it. */
    private static final Line STRAIGHT_AT_POCKET = new Line(PinCarry.POCKET_BOARD, 0);

    private final HomeLines homes;
    private final FeelFinder feels;
    private final OilFilm fresh;
    private final boolean handsShareLines;
    private final Map<Player, Known> known = new ConcurrentHashMap<>();

    /** What a kind of bowler brings. */
    private record Known(Line line, LineFeel feel) {}

    PatternLines(OilPattern pattern, Physics physics) {
        RowMarch march = new RowMarch(physics.grid());
        this.homes = physics.homeLines(new LineFinder(march, physics.carry()), pattern);
        this.feels = new FeelFinder(march);
        this.fresh = OilFilm.fresh(pattern, physics.grid());
        this.handsShareLines = pattern.isSymmetric();
    }

    /**
     * The line of a player on the fresh pattern. Where the pattern is the same from both gutters, both hands share it.
     *
     * @param player a player
     * @return his line
     */
    public Line of(Player player) {
        return known(player).line();
    }

    /**
     * What such a player knows of his balls on that line, from practice on the fresh pattern elsewhere.
     *
     * @param player a player
     * @return what his balls do
     */
    public LineFeel feel(Player player) {
        return known(player).feel();
    }

    private Known known(Player player) {
        Hand hand = handsShareLines ? Hand.RIGHT : player.hand();
        return known.computeIfAbsent(
                new Player(player.style(), player.spread(), hand, player.contact()), this::workedOut);
    }

    /** One thread at a time: finders serve one, and what they find for one kind serves the next. */
    private synchronized Known workedOut(Player player) {
        Line line = homes.start(player, fresh).orElse(STRAIGHT_AT_POCKET);
        return new Known(line, feels.feel(player, fresh, line));
    }
}
