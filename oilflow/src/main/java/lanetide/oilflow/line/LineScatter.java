package lanetide.oilflow.line;

import java.util.OptionalDouble;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.MarchTogether;
import lanetide.oilflow.pocket.PinCarry;

/** How a line fares under a player's scatter, by shots at fixed points of it. One object serves one thread. */
final class LineScatter {
    /** Points in searches; like those below, a whole number of {@link MarchTogether#BALLS}. */
    static final int COARSE = 32;

    /**
     * Points for a choice between two lines near each other: by how much one strikes more often is then off by 0.006 of
     * that over the points below (root mean square of 1878 pairs, computed).
     */
    static final int CHOICE = 128;

    /**
     * Points for a line that is described: strikes are then within 0.005 and pocket hits within 0.03 of the average
     * over 8192 points; the 32 points that serve the searches give 0.04 and 0.12.
     */
    static final int FINE = 256;

    /**
     * From so many balls on, by how much the share of strikes among them may fall short of that of all: of 7391 lines
     * under twelve sets of values none did by more than 0.045, 0.024 and 0.012 (computed).
     */
    private static final int[] TRIED = {64, 128, 192};

    private static final double[] SHORT_BY = {0.06, 0.035, 0.02};

    /** The searches use the first of the same points. */
    private static final ReleaseNodes POINTS = new ReleaseNodes(FINE);

    private final MarchTogether several;
    private final PinCarry carry;

    LineScatter(LaneGrid grid, PinCarry carry) {
        this.several = new MarchTogether(grid);
        this.carry = carry;
    }

    /** Shares of strikes and of pocket hits over so many points. */
    LineQuality quality(Player player, OilFilm film, Line line, int nodes) {
        Tally tally = new Tally(player, film, line);
        while (tally.balls < nodes) {
            tally.rollSome();
        }
        return new LineQuality(tally.strikes / nodes, (double) tally.pockets / nodes);
    }

    /** The share of strikes over {@link #FINE} points, given up as soon as it will not be more than a least one. */
    OptionalDouble strikeShareAbove(double least, Player player, OilFilm film, Line line) {
        Tally tally = new Tally(player, film, line);
        while (tally.balls < FINE) {
            if (tally.mostShare() <= least) {
                return OptionalDouble.empty();
            }
            tally.rollSome();
        }
        double share = tally.strikes / FINE;
        return share > least ? OptionalDouble.of(share) : OptionalDouble.empty();
    }

    /** What the balls at the first points came to. */
    private final class Tally {
        private final Player player;
        private final OilFilm film;
        private final Line line;
        private final double oilMl;
        private final double massKg;
        private int balls;
        private double strikes;
        private int pockets;

        Tally(Player player, OilFilm film, Line line) {
            this.player = player;
            this.film = film;
            this.line = line;
            this.oilMl = player.contact().oilInPlayMl();
            this.massKg = player.contact().ball().core().massKg();
        }

        /** The share that all balls may come to: however the rest fare, and as far as they are known to. */
        double mostShare() {
            double most = (strikes + (FINE - balls) * carry.mostStrikeChance()) / FINE;
            for (int stage = 0; stage < TRIED.length; stage++) {
                if (balls >= TRIED[stage]) {
                    most = Math.min(most, strikes / balls + SHORT_BY[stage]);
                }
            }
            return most;
        }

        void rollSome() {
            several.clear();
            for (int i = 0; i < MarchTogether.BALLS; i++) {
                several.add(scattered(player, line, balls + i), player.hand(), player.contact(), film, oilMl);
            }
            several.run();
            for (int i = 0; i < MarchTogether.BALLS; i++) {
                double arrival = several.arrivalBoard(i);
                strikes += carry.strikeChance(arrival, several.entryAngleRad(i), several.speedMps(i), massKg);
                pockets += PinCarry.isPocket(arrival) ? 1 : 0;
            }
            balls += MarchTogether.BALLS;
        }
    }

    /** A line as it leaves the hand at one point of the scatter. */
    private static Delivery scattered(Player player, Line line, int node) {
        ReleaseSpread spread = player.spread();
        Release release = player.style()
                .release()
                .scaled(1 + spread.speedShare() * POINTS.at(node, 2), 1 + spread.spinShare() * POINTS.at(node, 3));
        double atM = LaneGeometry.boardToMetres(line.laydownBoard()) + spread.laydownM() * POINTS.at(node, 0);
        double launchRad = line.launchRad() + spread.launchRad() * POINTS.at(node, 1);
        return Delivery.of(release, player.contact().ball().radiusM(), atM, launchRad);
    }
}
