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
    private final Map<Kind, Known> known = new HashMap<>();

    SpareLines(RowMarch march, OilFilm fresh) {
        this.march = march;
        this.fresh = fresh;
    }

    /** What bowlers with a usual release know of their spare ball. */
    Known of(Release usual, Contact contact) {
        Release release = new Release(
                usual.speedMps(), usual.spinRadps(), usual.axisRotationRad() * ROTATION_SHARE, usual.axisTiltRad());
        return known.computeIfAbsent(new Kind(release, contact), Known::new);
    }

    private record Kind(Release release, Contact contact) {}

    /** The lines of one kind of bowlers. */
    final class Known {
        private final Kind kind;
        private final Map<SpareTarget, Line> lines = new HashMap<>();

        private Known(Kind kind) {
            this.kind = kind;
        }

        /** The release they use at spares. */
        Release release() {
            return kind.release();
        }

        /** The line that takes their spare ball to a target on a fresh lane. */
        Line to(SpareTarget target) {
            return lines.computeIfAbsent(target, each -> solve(each, kind));
        }
    }

    /**
     * Corrects a straight aim by what it misses: the hook of a spare ball is small and steady. Where that does not
     * settle, the bowler keeps his last aim.
     */
    private Line solve(SpareTarget target, Kind kind) {
        double laydown = LaneGeometry.CENTRE_BOARD + CROSS_LANE_SHARE * (LaneGeometry.CENTRE_BOARD - target.board());
        double aim = target.board();
        Line line = straight(laydown, aim, target.depthM());
        for (int i = 0; i < 12; i++) {
            double miss = boardAtTarget(line, target, kind) - target.board();
            if (Math.abs(miss) < TOLERANCE_BOARDS) {
                return line;
            }
            aim -= miss;
            line = straight(laydown, aim, target.depthM());
        }
        return line;
    }

    private static Line straight(double laydown, double aimBoard, double depthM) {
        double acrossM = (laydown - aimBoard) * LaneGeometry.BOARD_M;
        return new Line(laydown, StrictMath.atan(acrossM / (LaneGeometry.HEAD_PIN_M + depthM)));
    }

    private double boardAtTarget(Line line, SpareTarget target, Kind kind) {
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        double radiusM = kind.contact().ball().radiusM();
        march.readInPlay(
                Delivery.of(kind.release(), radiusM, laydownM, line.launchRad()), Hand.RIGHT, kind.contact(), fresh);
        double beyond = StrictMath.tan(march.entryAngleRad()) * target.depthM() / LaneGeometry.BOARD_M;
        return march.arrivalBoard() + beyond;
    }
}
