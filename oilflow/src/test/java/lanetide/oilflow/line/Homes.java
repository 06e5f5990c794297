package lanetide.oilflow.line;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.motion.Contact;

/** Home lines found otherwise: without the preference for the length rule's board, or by looking at all lines. */
public final class Homes {
    private Homes() {}

    public static HomeLines withoutTheLengthRule(
            LineFinder finder, OilPattern pattern, Function<Coverstock, List<Contact>> knownBalls) {
        return new HomeLines(finder, pattern, knownBalls, Double.POSITIVE_INFINITY);
    }

    /** The home line as its definition says, with strikes counted on every line at every angle. */
    public static Optional<Line> ofAllLines(LineFinder finder, OilPattern pattern, PlayingStyle style, Contact ball) {
        Player player = new Player(style, HomeLines.SCATTER, Hand.RIGHT, ball);
        OilFilm known = OilFilm.holding(HomeLines.KNOWN_ML, pattern, finder.grid());
        double feet = pattern.lengthM() / LaneGeometry.FOOT_M;
        double nearest = feet < 34 ? 3 : Math.min(5, feet - 31);
        Line best = null;
        double most = -1;
        boolean bestIsAway = false;
        for (int step = -16; step <= 16; step++) {
            double offDeg = 0.125 * step;
            double launchRad = style.naturalLaunchRad() + Math.toRadians(offDeg);
            for (Line line : finder.linesAtAngle(player, known, launchRad)) {
                double exit = finder.exitBoard(player, known, line, pattern.lengthM());
                double strikes = finder.fineQuality(player, known, line).strikeShare();
                boolean isAway = strikes > 0 && Math.min(line.arrowsBoard(), exit) >= nearest;
                double merit = strikes * bell(offDeg / 0.45) * bell((exit - Math.max(3, feet - 31)) / 4);
                if (isAway == bestIsAway ? merit > most : isAway) {
                    best = line;
                    most = merit;
                    bestIsAway = isAway;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static double bell(double off) {
        return Math.exp(-off * off / 2);
    }
}
