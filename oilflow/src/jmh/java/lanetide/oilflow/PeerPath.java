package lanetide.oilflow;

import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.motion.Delivery;
import org.apache.commons.math3.ode.AbstractIntegrator;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/**
 * A shot by a general integrator, put as kindly to it as can be: over distance instead of time, so that it need not
 * look for the pins; two unknowns, place across and size of the slip, because the slip keeps its direction on a level
 * lane; and no search for the moment the ball begins to roll; and over a film drawn smooth along the lane, because
 * steps from row to row would cost it most of its time. A right-hander's dry ball that moves no oil.
 */
final class PeerPath implements FirstOrderDifferentialEquations {
    private static final double GRAVITY_MPS2 = 9.80665;
    private static final double CONTACT_M = LaneGeometry.BOARD_M / 8;

    private final OilFilm film;
    private final FrictionLaw friction;
    private final double kappa;
    private final double[] state = new double[2];
    private double rollX;
    private double rollY;
    private double addX;
    private double addY;

    PeerPath(OilFilm film, FrictionLaw friction, double kappa) {
        this.film = film;
        this.friction = friction;
        this.kappa = kappa;
    }

    /** Board at which the ball meets the pins. */
    double arrivalBoard(Delivery delivery, AbstractIntegrator integrator) {
        double ux = delivery.vxMps() - delivery.sxMps();
        double uy = delivery.vyMps() - delivery.syMps();
        double slip = Math.hypot(ux, uy);
        double share = kappa / (1 + kappa);
        rollX = delivery.vxMps() - share * ux;
        rollY = delivery.vyMps() - share * uy;
        addX = share * ux / slip;
        addY = share * uy / slip;
        state[0] = delivery.xM();
        state[1] = slip;
        integrator.integrate(this, 0, state, LaneGeometry.HEAD_PIN_M, state);
        return LaneGeometry.metresToBoard(state[0]);
    }

    @Override
    public int getDimension() {
        return 2;
    }

    @Override
    public void computeDerivatives(double alongM, double[] s, double[] rate) {
        double slip = Math.max(0, s[1]);
        double vy = rollY + addY * slip;
        rate[0] = (rollX + addX * slip) / vy;
        double slowing = GRAVITY_MPS2 * (1 + 1 / kappa) * friction.coefficient(filmUm(s[0], alongM));
        rate[1] = s[1] > 0 ? -slowing / vy : 0;
    }

    /** Film under the contact, between the middles of two rows. */
    private double filmUm(double xM, double alongM) {
        double place = Math.max(
                0, Math.min(film.grid().rows() - 1.001, alongM / film.grid().rowLengthM() - 0.5));
        int row = (int) place;
        double inNext = place - row;
        return (1 - inNext) * filmUm(xM, row) + inNext * filmUm(xM, row + 1);
    }

    /** Film under the contact in a row, between the two columns that it covers in part. */
    private double filmUm(double xM, int row) {
        double width = film.grid().columnWidthM();
        double place = Math.max(0, Math.min(film.grid().columns() - 1.001, (xM - CONTACT_M / 2) / width));
        int column = (int) place;
        double inNext = place - column;
        return (1 - inNext) * film.thicknessUm(column, row) + inNext * film.thicknessUm(column + 1, row);
    }
}
