package lanetide.squads.equipment;

import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.bowler.LineFeel;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Works out what a bowler knows of his balls on a line: the straight line that best foretells, from the miss at the
 * arrows, where they meet the pins. Averages run over normal laydowns and angles at seven Gauss-Hermite nodes each;
 * what speed and revs add is taken from one standard deviation to either side. Balls in the gutter are left out. One
 * object serves one thread.
 */
final class FeelFinder {
    private static final int NODES = 7;

    private final RowMarch march;
    private final GaussIntegrator normal = new GaussIntegratorFactory().hermite(NODES);

    FeelFinder(RowMarch march) {
        this.march = march;
    }

    LineFeel feel(Player player, OilFilm film, Line line) {
        Sums sums = new Sums();
        for (int i = 0; i < NODES; i++) {
            for (int j = 0; j < NODES; j++) {
                Throw thrown = new Throw(node(i), node(j), 0, 0);
                if (roll(player, film, line, thrown)) {
                    double weight = normal.getWeight(i) * normal.getWeight(j);
                    sums.add(weight, missAtArrows(player, thrown), miss(), march.entryAngleRad());
                }
            }
        }
        double speed = halfDifference(player, film, line, new Throw(0, 0, -1, 0), new Throw(0, 0, 1, 0));
        double spin = halfDifference(player, film, line, new Throw(0, 0, 0, -1), new Throw(0, 0, 0, 1));
        return sums.feel(speed * speed + spin * spin);
    }

    /** A release in standard deviations from the usual one. */
    private record Throw(double laydown, double angle, double speed, double spin) {}

    private double node(int i) {
        return normal.getPoint(i) * StrictMath.sqrt(2);
    }

    private double halfDifference(Player player, OilFilm film, Line line, Throw below, Throw above) {
        boolean both = roll(player, film, line, below);
        double miss = miss();
        both &= roll(player, film, line, above);
        return both ? (miss() - miss) / 2 : 0;
    }

    private double miss() {
        return march.arrivalBoard() - PinCarry.POCKET_BOARD;
    }

    private boolean roll(Player player, OilFilm film, Line line, Throw thrown) {
        var spread = player.spread();
        var release = player.style()
                .release()
                .scaled(1 + spread.speedShare() * thrown.speed(), 1 + spread.spinShare() * thrown.spin());
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard()) + spread.laydownM() * thrown.laydown();
        double launchRad = line.launchRad() + spread.launchRad() * thrown.angle();
        double radiusM = player.contact().ball().radiusM();
        march.readInPlay(Delivery.of(release, radiusM, laydownM, launchRad), player.hand(), player.contact(), film);
        return march.reachedPins();
    }

    /** To first order in the angle, whose sine and tangent differ by less than a hundredth of a board here. */
    private static double missAtArrows(Player player, Throw thrown) {
        double acrossM = player.spread().laydownM() * thrown.laydown()
                - player.spread().launchRad() * thrown.angle() * LaneGeometry.ARROWS_M;
        return acrossM / LaneGeometry.BOARD_M;
    }

    /** Weighted sums for a regression of y on x. */
    private static final class Sums {
        private double weight;
        private double x;
        private double y;
        private double xx;
        private double xy;
        private double yy;
        private double entryRad;

        void add(double w, double atX, double atY, double withEntryRad) {
            weight += w;
            entryRad += w * withEntryRad;
            x += w * atX;
            y += w * atY;
            xx += w * atX * atX;
            xy += w * atX * atY;
            yy += w * atY * atY;
        }

        LineFeel feel(double furtherVariance) {
            if (weight == 0) {
                return new LineFeel(0, 0, 0, 0, 0);
            }
            double meanX = x / weight;
            double meanY = y / weight;
            double varianceX = xx / weight - meanX * meanX;
            double slope = varianceX > 0 ? (xy / weight - meanX * meanY) / varianceX : 0;
            double variance = Math.max(0, yy / weight - meanY * meanY) + furtherVariance;
            return new LineFeel(
                    meanY - slope * meanX,
                    slope,
                    StrictMath.sqrt(Math.max(0, variance - slope * slope * varianceX)),
                    StrictMath.sqrt(variance),
                    entryRad / weight);
        }
    }
}
