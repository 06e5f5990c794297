package lanetide.oilflow.motion;

import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * The referee of {@link RowMarch}: the equations of motion in full, dv/dt = -mu g u/|u| and dS/dt = (mu g/kappa) u/|u|
 * with u = v - S, integrated over time with an adaptive step (Dormand and Prince 8(5,3), Hairer, Norsett and Wanner,
 * Solving Ordinary Differential Equations I), and with the pull of gravity down a lane that is not level, -g times its
 * rise, on the ball's centre alone; a ball that rolls keeps v = S, which needs friction kappa/(1+kappa) against the
 * pull. It does not use that the slip keeps its direction on a level lane, nor that a row holds one coefficient:
 * friction is read from the film under the ball at every evaluation, as the mean over the width of the contact, while
 * the ball crosses from column to column. The film is constant along a row, so the integration stops at each row's edge
 * and keeps its order.
 *
 * <p>A dry ball that moves no oil.
 */
final class AdaptivePath {
    private static final double GRAVITY_MPS2 = 9.80665;
    private static final double CONTACT_M = LaneGeometry.BOARD_M / 8;
    private static final double ROLLS_BELOW_MPS = 1e-7;
    private static final double TOLERANCE = 1e-10;
    private static final double MAX_TIME_S = 20;
    /** Places of the state: position, velocity, and the velocity that the spin would roll the ball at. */
    private static final int X = 0;

    private static final int Y = 1;
    private static final int VX = 2;
    private static final int VY = 3;
    private static final int SX = 4;
    private static final int SY = 5;

    private final double kappa;
    private final FrictionLaw friction;
    private final OilFilm film;
    private final Hand hand;
    private final double[] state;
    private int row;
    private double timeS;
    private double rollDistanceM = Double.NaN;

    private AdaptivePath(Delivery delivery, Hand hand, double kappa, FrictionLaw friction, OilFilm film) {
        this.kappa = kappa;
        this.friction = friction;
        this.film = film;
        this.hand = hand;
        this.state =
                new double[] {delivery.xM(), 0, delivery.vxMps(), delivery.vyMps(), delivery.sxMps(), delivery.syMps()};
    }

    static AdaptivePath of(Delivery delivery, Hand hand, double kappa, FrictionLaw friction, OilFilm film) {
        AdaptivePath path = new AdaptivePath(delivery, hand, kappa, friction, film);
        path.run();
        return path;
    }

    boolean reachedPins() {
        return row == film.grid().rows();
    }

    double arrivalBoard() {
        return LaneGeometry.metresToBoard(state[X]);
    }

    double directionRad() {
        return Math.atan2(state[VX], state[VY]);
    }

    double speedMps() {
        return Math.hypot(state[VX], state[VY]);
    }

    double timeS() {
        return timeS;
    }

    double rollDistanceM() {
        return rollDistanceM;
    }

    private void run() {
        while (row < film.grid().rows() && onLane()) {
            double edgeM = (row + 1) * film.grid().rowLengthM();
            if (Double.isNaN(rollDistanceM)) {
                slideTo(edgeM);
            }
            if (!Double.isNaN(rollDistanceM) && onLane()) {
                rollTo(edgeM);
            }
            row += onLane() ? 1 : 0;
        }
    }

    private boolean onLane() {
        return state[X] > 0 && state[X] < LaneGeometry.WIDTH_M;
    }

    private void slideTo(double edgeM) {
        if (slip(state) <= ROLLS_BELOW_MPS) {
            rollDistanceM = state[Y];
            return;
        }
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-14, 1, TOLERANCE, TOLERANCE);
        stopAt(integrator, s -> s[Y] - edgeM);
        stopAt(integrator, s -> slip(s) - ROLLS_BELOW_MPS);
        stopAt(integrator, s -> s[X]);
        stopAt(integrator, s -> LaneGeometry.WIDTH_M - s[X]);
        timeS = integrator.integrate(new Moving(true), timeS, state, timeS + MAX_TIME_S, state);
        if (slip(state) <= 2 * ROLLS_BELOW_MPS) {
            rollDistanceM = state[Y];
        }
    }

    /** Straight on, on a level lane; past the edge of the lane the ball stays where it went over. */
    private void rollTo(double edgeM) {
        if (!film.topography().isFlat()) {
            DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-14, 1, TOLERANCE, TOLERANCE);
            stopAt(integrator, s -> s[Y] - edgeM);
            timeS = integrator.integrate(new Moving(false), timeS, state, timeS + MAX_TIME_S, state);
            return;
        }
        double forS = (edgeM - state[Y]) / state[VY];
        timeS += forS;
        state[X] += state[VX] * forS;
        state[Y] = edgeM;
    }

    private static double slip(double[] s) {
        return Math.hypot(s[VX] - s[SX], s[VY] - s[SY]);
    }

    /** Mean film under the contact, from the thickness integrated over the columns that it covers. */
    private double filmUm(double xM) {
        double half = CONTACT_M / 2;
        double centre = Math.max(half, Math.min(LaneGeometry.WIDTH_M - half, xM));
        double width = film.grid().columnWidthM();
        double from = (centre - half) / width;
        double to = (centre + half) / width;
        double sum = 0;
        for (int column = (int) from; column < to && column < film.grid().columns(); column++) {
            double covered = Math.min(to, column + 1) - Math.max(from, column);
            int fromRight = hand == Hand.RIGHT ? column : film.grid().columns() - 1 - column;
            sum += covered * film.thicknessUm(fromRight, row);
        }
        return sum / (to - from);
    }

    private static void stopAt(DormandPrince853Integrator integrator, Crossing crossing) {
        integrator.addEventHandler(
                new EventHandler() {
                    @Override
                    public void init(double t0, double[] y0, double t) {}

                    @Override
                    public double g(double t, double[] y) {
                        return crossing.value(y);
                    }

                    @Override
                    public Action eventOccurred(double t, double[] y, boolean increasing) {
                        return Action.STOP;
                    }

                    @Override
                    public void resetState(double t, double[] y) {}
                },
                0.05,
                1e-13,
                200);
    }

    /** A value whose change of sign ends a stretch of the integration. */
    private interface Crossing {
        double value(double[] state);
    }

    /** The motion of a ball that slides or rolls. */
    private final class Moving implements FirstOrderDifferentialEquations {
        private final boolean sliding;

        Moving(boolean sliding) {
            this.sliding = sliding;
        }

        @Override
        public int getDimension() {
            return 6;
        }

        @Override
        public void computeDerivatives(double t, double[] s, double[] rate) {
            double ux = s[VX] - s[SX];
            double uy = s[VY] - s[SY];
            double slip = Math.hypot(ux, uy);
            double brakingMps2 = friction.coefficient(filmUm(s[X])) * GRAVITY_MPS2;
            double fromRightM = hand == Hand.RIGHT ? s[X] : LaneGeometry.WIDTH_M - s[X];
            double riseAcross = film.topography().riseAcross(fromRightM, s[Y]);
            double pullX = -GRAVITY_MPS2 * (hand == Hand.RIGHT ? riseAcross : -riseAcross);
            double pullY = -GRAVITY_MPS2 * film.topography().riseAlong(fromRightM, s[Y]);
            double frictionX = sliding ? -brakingMps2 * ux / slip : -kappa / (1 + kappa) * pullX;
            double frictionY = sliding ? -brakingMps2 * uy / slip : -kappa / (1 + kappa) * pullY;
            rate[X] = s[VX];
            rate[Y] = s[VY];
            rate[VX] = pullX + frictionX;
            rate[VY] = pullY + frictionY;
            rate[SX] = -frictionX / kappa;
            rate[SY] = -frictionY / kappa;
        }
    }
}
