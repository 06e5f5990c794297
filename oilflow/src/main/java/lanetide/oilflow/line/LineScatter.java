package lanetide.oilflow.line;

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
     * Points for a line that is described: strikes are then within 0.005 and pocket hits within 0.03 of the average
     * over 8192 points; the 32 points that serve the searches give 0.04 and 0.12.
     */
    static final int FINE = 256;

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
        double oilMl = player.contact().oilInPlayMl();
        double massKg = player.contact().ball().core().massKg();
        double strikes = 0;
        int pockets = 0;
        for (int first = 0; first < nodes; first += MarchTogether.BALLS) {
            several.clear();
            for (int i = 0; i < MarchTogether.BALLS; i++) {
                several.add(scattered(player, line, first + i), player.hand(), player.contact(), film, oilMl);
            }
            several.run();
            for (int i = 0; i < MarchTogether.BALLS; i++) {
                double arrival = several.arrivalBoard(i);
                strikes += carry.strikeChance(arrival, several.entryAngleRad(i), several.speedMps(i), massKg);
                pockets += PinCarry.isPocket(arrival) ? 1 : 0;
            }
        }
        return new LineQuality(strikes / nodes, (double) pockets / nodes);
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
