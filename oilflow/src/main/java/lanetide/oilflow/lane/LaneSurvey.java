package lanetide.oilflow.lane;

import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.stream.DoubleStream;
import lanetide.oilflow.Require;

/**
 * The shape of a lane as an inspector measures it: how far it leans and bulges at some distances. Straight lines
 * between them, the nearest beyond the outermost; across, the bulge is a parabola.
 *
 * <p>Limits: a lane may be out of level, crowned or depressed by at most 40/1000 in (USBC, as quoted by several pages);
 * an inspector quotes 50/1000 in for cross tilt (Bassi, Annual bowling lane certifications, 2019). Heights along the
 * middle of the lane are left out: the same limit over its length would change a ball's speed by a thousandth.
 *
 * @param stations what was measured, by rising distance, at least one
 */
public record LaneSurvey(List<Station> stations) implements Topography {
    /** Largest tilt, crown and depression by the rules (m). */
    public static final double LIMIT_M = 0.040 * 0.0254;

    /** What a random lane is measured at (m): the foul line, 20, 40 and 60 ft (assumption). */
    private static final double[] DRAWN_AT_M = {
        0, 20 * LaneGeometry.FOOT_M, 40 * LaneGeometry.FOOT_M, LaneGeometry.HEAD_PIN_M
    };

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is no station or distances do not rise
     */
    public LaneSurvey {
        stations = List.copyOf(stations);
        if (stations.isEmpty()) {
            throw new IllegalArgumentException("a lane's survey has no station; it must have one at least");
        }
        for (int i = 1; i < stations.size(); i++) {
            Require.inRange(
                    stations.get(i).alongM(),
                    "distance (m) of station " + (i + 1),
                    Math.nextUp(stations.get(i - 1).alongM()),
                    LaneGeometry.HEAD_PIN_M);
        }
    }

    /**
     * What was measured at a distance.
     *
     * @param alongM distance from the foul line (m), 0 to 18.288
     * @param tiltM height of the left edge over the right one (m), -0.006 to 0.006
     * @param crownM height of the middle over the mean of the edges (m), -0.006 to 0.006; below 0 a depression
     */
    public record Station(double alongM, double tiltM, double crownM) {
        private static final double MAX_M = 0.006;

        /**
         * Checks the ranges above.
         *
         * @throws IllegalArgumentException if a value lies outside its range
         */
        public Station {
            Require.inRange(alongM, "distance (m)", 0, LaneGeometry.HEAD_PIN_M);
            Require.inRange(tiltM, "cross tilt (m)", -MAX_M, MAX_M);
            Require.inRange(crownM, "crown (m)", -MAX_M, MAX_M);
        }
    }

    /**
     * A lane as chance makes it: tilt and crown at the foul line, 20, 40 and 60 ft independent and normal, held within
     * a limit.
     *
     * @param spreadM standard deviation of tilt and of crown (m), at least 0
     * @param limitM most of either (m)
     * @param normal draws standard normal numbers, eight of them
     * @return the lane
     */
    public static LaneSurvey drawn(double spreadM, double limitM, DoubleSupplier normal) {
        return new LaneSurvey(DoubleStream.of(DRAWN_AT_M)
                .mapToObj(alongM -> new Station(
                        alongM,
                        held(spreadM * normal.getAsDouble(), limitM),
                        held(spreadM * normal.getAsDouble(), limitM)))
                .toList());
    }

    private static double held(double value, double limit) {
        return Math.max(-limit, Math.min(limit, value));
    }

    @Override
    public double riseAcross(double fromRightM, double alongM) {
        int next = next(alongM);
        double way = way(next, alongM);
        double tiltM = between(before(next).tiltM(), after(next).tiltM(), way);
        double crownM = between(before(next).crownM(), after(next).crownM(), way);
        return (tiltM - 4 * crownM * fromMiddle(fromRightM)) / LaneGeometry.WIDTH_M;
    }

    @Override
    public double riseAlong(double fromRightM, double alongM) {
        int next = next(alongM);
        if (next == 0 || next == stations.size()) {
            return 0;
        }
        double middle = fromMiddle(fromRightM);
        double tilted = 0.5 * middle * (after(next).tiltM() - before(next).tiltM());
        double crowned =
                (1 - middle * middle) * (after(next).crownM() - before(next).crownM());
        return (tilted + crowned) / (after(next).alongM() - before(next).alongM());
    }

    /** Place across: -1 at the right-hand edge, 1 at the left-hand one. */
    private static double fromMiddle(double fromRightM) {
        return 2 * fromRightM / LaneGeometry.WIDTH_M - 1;
    }

    /** The first station at or past a distance. */
    private int next(double alongM) {
        int next = 0;
        while (next < stations.size() && stations.get(next).alongM() < alongM) {
            next++;
        }
        return next;
    }

    private Station before(int next) {
        return stations.get(Math.max(next - 1, 0));
    }

    private Station after(int next) {
        return stations.get(Math.min(next, stations.size() - 1));
    }

    private double way(int next, double alongM) {
        double lengthM = after(next).alongM() - before(next).alongM();
        return lengthM > 0 ? (alongM - before(next).alongM()) / lengthM : 0;
    }

    private static double between(double from, double to, double way) {
        return from + way * (to - from);
    }
}
