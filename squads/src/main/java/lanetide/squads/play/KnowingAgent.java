package lanetide.squads.play;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.LineSearch;
import lanetide.oilflow.line.Player;
import lanetide.squads.bowler.BowlerAgent;
import lanetide.squads.bowler.PlayedLines;

/**
 * A bowler who knows the oil, which nobody does: the upper bound for those who learn. On a lane that is new to him, and
 * on every sixth of his balls at full racks there, he takes the best of three lines: the one he plays, that one moved
 * two and one to the pocket, and the best one within two boards of the feet and half a degree. He changes for half a
 * strike in a hundred.
 */
final class KnowingAgent implements BowlerAgent {
    private static final int BALLS_BETWEEN_LOOKS = 6;
    private static final double MIN_GAIN = 0.005;

    private final Player player;
    private final LineFinder finder;
    private final LineSearch search;
    private final PlayedLines lines;
    private final Map<Integer, Integer> ballsOnLane = new HashMap<>();

    KnowingAgent(Player player, LineFinder finder, Line start) {
        this.player = player;
        this.finder = finder;
        this.search = new LineSearch(finder);
        this.lines = new PlayedLines(start);
    }

    @Override
    public Line line(int lane) {
        return lines.on(lane);
    }

    /** Stands ready for a ball at a full rack. */
    void look(int lane, OilFilm film) {
        int balls = ballsOnLane.merge(lane, 1, Integer::sum);
        if (balls % BALLS_BETWEEN_LOOKS == 1) {
            lines.play(lane, best(film, lines.on(lane)));
        }
    }

    @Override
    public void moveOn() {
        lines.moveOn();
        ballsOnLane.clear();
    }

    private Line best(OilFilm film, Line present) {
        Optional<Line> moved = finder.moveToPocket(player, film, present);
        Optional<Line> near = search.near(player, film, moved.orElse(present));
        Line best = present;
        double share = strikeShare(film, present) + MIN_GAIN;
        for (Line line : Stream.concat(moved.stream(), near.stream()).toList()) {
            double other = strikeShare(film, line);
            if (other > share) {
                best = line;
                share = other;
            }
        }
        return best;
    }

    private double strikeShare(OilFilm film, Line line) {
        return finder.choiceQuality(player, film, line).strikeShare();
    }
}
