package lanetide.squads.play;

import java.util.HashMap;
import java.util.Map;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.SpareTarget;

/**
 * How bowlers shoot at spares: across the lane, firm and nearly straight, with an allowance for the little hook they
 * know from a fresh lane. What the lane has become since, they have not allowed for. One object serves one thread.
 */
final class SpareLines {
    /** Share of the usual axis rotation that is left when a bowler turns his ball flat for a spare (assumption). */
    private static final double ROTATION_SHARE = 0.2;

    /** Boards he stands to the other side for each board the target is off the middle (common practice, no source). */
    private static final double CROSS_LANE_SHARE = 0.5;

    private static final double TOLERANCE_BOARDS = 0.05;

    private final RowMarch march;
    private final OilFilm fresh;
    private final Map<Key, Line> known = new HashMap<>();

    SpareLines(RowMarch march, OilFilm fresh) {
        this.march = march;
        this.fresh = fresh;
    }

    /** The release a bowler uses at spares. */
    static Release release(Release usual) {
        return new Release(
                usual.speedMps(), usual.spinRadps(), usual.axisRotationRad() * ROTATION_SHARE, usual.axisTiltRad());
    }

    /** The line that takes a spare ball to a target on a fresh lane. */
    Line to(SpareTarget target, Release release, Contact contact) {
        return known.computeIfAbsent(new Key(target, release, contact), this::solve);
    }

    /**
     * Corrects a straight aim by what it misses: the hook of a spare ball is small and steady. Where that does not
     * settle, the bowler keeps his last aim.
     */
    private Line solve(Key key) {
        double laydown = LaneGeometry.CENTRE_BOARD
                + CROSS_LANE_SHARE * (LaneGeometry.CENTRE_BOARD - key.target().board());
        double aim = key.target().board();
        Line line = straight(laydown, aim, key.target().depthM());
        for (int i = 0; i < 12; i++) {
            double miss = boardAtTarget(line, key) - key.target().board();
            if (Math.abs(miss) < TOLERANCE_BOARDS) {
                return line;
            }
            aim -= miss;
            line = straight(laydown, aim, key.target().depthM());
        }
        return line;
    }

    private static Line straight(double laydown, double aimBoard, double depthM) {
        double acrossM = (laydown - aimBoard) * LaneGeometry.BOARD_M;
        return new Line(laydown, StrictMath.atan(acrossM / (LaneGeometry.HEAD_PIN_M + depthM)));
    }

    private double boardAtTarget(Line line, Key key) {
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        double radiusM = key.contact().ball().radiusM();
        march.readInPlay(
                Delivery.of(key.release(), radiusM, laydownM, line.launchRad()), Hand.RIGHT, key.contact(), fresh);
        double beyond = StrictMath.tan(march.entryAngleRad()) * key.target().depthM() / LaneGeometry.BOARD_M;
        return march.arrivalBoard() + beyond;
    }

    private record Key(SpareTarget target, Release release, Contact contact) {}
}
