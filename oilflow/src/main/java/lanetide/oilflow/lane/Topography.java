package lanetide.oilflow.lane;

/**
 * How far a lane is from level and flat. Places are counted from the right-hand gutter and the foul line. From one
 * gutter to the other its height is a parabola, so that it rises across in a straight line of the place, and along in a
 * parabola.
 */
public interface Topography {
    /** A level, flat lane. */
    Topography FLAT = new Topography() {
        @Override
        public double riseAcross(double fromRightM, double alongM) {
            return 0;
        }

        @Override
        public double riseAlong(double fromRightM, double alongM) {
            return 0;
        }

        @Override
        public boolean isFlat() {
            return true;
        }
    };

    /**
     * How steeply the lane rises toward the left-hand gutter.
     *
     * @param fromRightM distance from the right-hand lane edge (m)
     * @param alongM distance from the foul line (m)
     * @return rise over way (m/m), small against 1
     */
    double riseAcross(double fromRightM, double alongM);

    /**
     * How steeply the lane rises toward the pins.
     *
     * @param fromRightM distance from the right-hand lane edge (m)
     * @param alongM distance from the foul line (m)
     * @return rise over way (m/m), small against 1
     */
    double riseAlong(double fromRightM, double alongM);

    /**
     * Whether the lane rises nowhere.
     *
     * @return whether balls roll as on a level plane
     */
    default boolean isFlat() {
        return false;
    }
}
