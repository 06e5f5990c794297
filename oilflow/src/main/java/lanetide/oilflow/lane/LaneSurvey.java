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
 */
public final class LaneSurvey implements Topography {
    /** Largest tilt, crown and depression by the rules (m). */
    public static final double LIMIT_M = 0.040 * 0.0254;

    private static final double PER_WIDTH = 1 / LaneGeometry.WIDTH_M;

    /** What a random lane is measured at (m): the foul line, 20, 40 and 60 ft (assumption). */
    private static final double[] DRAWN_AT_M = {
        0, 20 * LaneGeometry.FOOT_M, 40 * LaneGeometry.FOOT_M, LaneGeometry.HEAD_PIN_M
    };

    private final List<Station> stations;
    /** What lies between two stations next to each other, and before the first and past the last. */
    private final Stretch[] stretches;

    /**
     * Copies the list.
     *
     * @param stations what was measured, by rising distance, at least one
     * @throws IllegalArgumentException if there is no station or distances do not rise
     */
    public LaneSurvey(List<Station> stations) {
        this.stations = List.copyOf(stations);
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
        this.stretches = stretches(this.stations);
    }

    private static Stretch[] stretches(List<Station> stations) {
        Stretch[] stretches = new Stretch[stations.size() + 1];
        Station last = stations.get(stations.size() - 1);
        for (int i = 0; i < stations.size(); i++) {
            stretches[i] = Stretch.between(stations.get(Math.max(i - 1, 0)), stations.get(i));
        }
        stretches[stations.size()] =
                new Stretch(last.alongM(), Double.POSITIVE_INFINITY, last.tiltM(), 0, last.crownM(), 0);
        return stretches;
    }

    /**
     * What was measured.
     *
     * @return the stations, by rising distance
     */
    public List<Station> stations() {
        return stations;
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
        Stretch here = at(alongM);
        double fromStartM = alongM - here.startM;
        double tiltM = here.tiltM + here.tiltChange * fromStartM;
        double crownM = here.crownM + here.crownChange * fromStartM;
        return (tiltM - 4 * crownM * fromMiddle(fromRightM)) * PER_WIDTH;
    }

    @Override
    public double riseAlong(double fromRightM, double alongM) {
        Stretch here = at(alongM);
        double middle = fromMiddle(fromRightM);
        return 0.5 * middle * here.tiltChange + (1 - middle * middle) * here.crownChange;
    }

    /** Place across: -1 at the right-hand edge, 1 at the left-hand one. */
    private static double fromMiddle(double fromRightM) {
        return 2 * fromRightM * PER_WIDTH - 1;
    }

    private Stretch at(double alongM) {
        int next = 0;
        while (stretches[next].endM < alongM) {
            next++;
        }
        return stretches[next];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LaneSurvey survey && stations.equals(survey.stations);
    }

    @Override
    public int hashCode() {
        return stations.hashCode();
    }

    @Override
    public String toString() {
        return "LaneSurvey" + stations;
    }

    /**
     * Part of a lane over which tilt and crown change steadily.
     *
     * @param startM where it starts (m)
     * @param endM where it ends (m)
     * @param tiltM tilt at its start (m)
     * @param tiltChange change of the tilt along it (m/m)
     * @param crownM crown at its start (m)
     * @param crownChange change of the crown along it (m/m)
     */
    private record Stretch(
            double startM, double endM, double tiltM, double tiltChange, double crownM, double crownChange) {
        static Stretch between(Station from, Station to) {
            double lengthM = to.alongM() - from.alongM();
            double share = lengthM > 0 ? 1 / lengthM : 0;
            return new Stretch(
                    from.alongM(),
                    to.alongM(),
                    from.tiltM(),
                    share * (to.tiltM() - from.tiltM()),
                    from.crownM(),
                    share * (to.crownM() - from.crownM()));
        }
    }
}
