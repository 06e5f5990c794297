package lanetide.oilflow.lane;

/**
 * How a lane rises in the middle of every row of a grid: across it, a straight line of the place across; along it, a
 * parabola. A ball asks for both in every row, and finds them here without a division or a search.
 */
public final class RowSlopes {
    private static final int FORMS = 5;
    private static final double PER_WIDTH = 1 / LaneGeometry.WIDTH_M;

    /** Five numbers a row: across at the middle and what it gains by the half width, then along, likewise squared. */
    private final double[] forms;

    /**
     * The slopes of a shape on a grid.
     *
     * @param shape how far a lane is from level
     * @param grid the grid
     */
    public RowSlopes(Topography shape, LaneGrid grid) {
        forms = new double[FORMS * grid.rows()];
        if (shape.isFlat()) {
            return;
        }
        double middleM = LaneGeometry.WIDTH_M / 2;
        for (int row = 0; row < grid.rows(); row++) {
            double alongM = (row + 0.5) * grid.rowLengthM();
            int at = FORMS * row;
            forms[at] = shape.riseAcross(middleM, alongM);
            forms[at + 1] = shape.riseAcross(LaneGeometry.WIDTH_M, alongM) - forms[at];
            double right = shape.riseAlong(0, alongM);
            double left = shape.riseAlong(LaneGeometry.WIDTH_M, alongM);
            forms[at + 2] = shape.riseAlong(middleM, alongM);
            forms[at + 3] = (left - right) / 2;
            forms[at + 4] = (left + right) / 2 - forms[at + 2];
        }
    }

    /**
     * How steeply the lane rises toward the left-hand gutter.
     *
     * @param row the row
     * @param fromRightM distance from the right-hand lane edge (m)
     * @return rise over way (m/m)
     */
    public double across(int row, double fromRightM) {
        return forms[FORMS * row] + forms[FORMS * row + 1] * fromMiddle(fromRightM);
    }

    /**
     * How steeply the lane rises toward the pins.
     *
     * @param row the row
     * @param fromRightM distance from the right-hand lane edge (m)
     * @return rise over way (m/m)
     */
    public double along(int row, double fromRightM) {
        double middle = fromMiddle(fromRightM);
        int at = FORMS * row;
        return forms[at + 2] + middle * (forms[at + 3] + middle * forms[at + 4]);
    }

    /** Place across: -1 at the right-hand edge, 1 at the left-hand one. */
    private static double fromMiddle(double fromRightM) {
        return 2 * fromRightM * PER_WIDTH - 1;
    }
}
