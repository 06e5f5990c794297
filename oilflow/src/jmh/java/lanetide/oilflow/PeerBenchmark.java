package lanetide.oilflow;

import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleFunction;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.MarchTogether;
import lanetide.oilflow.motion.RowMarch;
import org.apache.commons.math3.ode.AbstractIntegrator;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The same shots over the same film by the march and by the adaptive integrators of Commons Math (Dormand and Prince
 * 8(5,3) and 5(4)), each at the loosest tolerance at which all of these shots still arrive within 0.01 board of its own
 * tight integration; the march is held to as much by a test. Samples, because their median holds on a machine that has
 * other things to do.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class PeerBenchmark {
    private static final double WITHIN_BOARDS = 0.01;
    private static final int SHOTS = 16;

    private final Catalogue catalogue = Catalogue.shipped();
    private final BallSpec ball = BallSpec.of(catalogue.covers().get("medium-reactive"));
    private final Contact usual = Contact.between(ball, catalogue.surfaces().get("hard-synthetic"));
    private final Contact dry = new Contact(ball, usual.friction(), FilmSplit.NONE);
    private final OilFilm film =
            OilFilm.fresh(OilPattern.of("bench", 40 * LaneGeometry.FOOT_M, 25, 3), LaneGrid.DEFAULT);
    private final RowMarch march = new RowMarch(LaneGrid.DEFAULT);
    private final MarchTogether together = new MarchTogether(LaneGrid.DEFAULT);
    private final PeerPath path = new PeerPath(film, usual.friction(), ball.inertiaRatio());
    private final Delivery[] shots = new Delivery[SHOTS];
    private AbstractIntegrator dormandPrince853;
    private AbstractIntegrator dormandPrince54;
    private int shot;

    @Setup
    public void prepare() {
        PlayingStyle style = catalogue.styles().get("tweener");
        for (int i = 0; i < SHOTS; i++) {
            double laydownM = LaneGeometry.boardToMetres(16 + 0.1 * i);
            shots[i] = Delivery.of(style.release(), ball.radiusM(), laydownM, style.naturalLaunchRad());
        }
        dormandPrince853 = loosest("8(5,3)", PeerBenchmark::dormandPrince853);
        dormandPrince54 = loosest("5(4)", PeerBenchmark::dormandPrince54);
    }

    private static AbstractIntegrator dormandPrince853(double tolerance) {
        return new DormandPrince853Integrator(1e-12, LaneGeometry.HEAD_PIN_M, tolerance, tolerance);
    }

    private static AbstractIntegrator dormandPrince54(double tolerance) {
        return new DormandPrince54Integrator(1e-12, LaneGeometry.HEAD_PIN_M, tolerance, tolerance);
    }

    private AbstractIntegrator loosest(String name, DoubleFunction<AbstractIntegrator> at) {
        for (double power = 0; power >= -10; power -= 0.25) {
            AbstractIntegrator integrator = at.apply(Math.pow(10, power));
            double worst = worst(integrator);
            if (worst <= WITHIN_BOARDS) {
                System.out.printf(Locale.ROOT, "%n%s at tolerance 10^%.2f: within %.4f board%n", name, power, worst);
                return integrator;
            }
        }
        throw new IllegalStateException(name + " does not reach " + WITHIN_BOARDS + " board");
    }

    private double worst(AbstractIntegrator integrator) {
        AbstractIntegrator tight = dormandPrince853(1e-9);
        double worst = 0;
        for (Delivery delivery : shots) {
            worst = Math.max(
                    worst, Math.abs(path.arrivalBoard(delivery, integrator) - path.arrivalBoard(delivery, tight)));
        }
        return worst;
    }

    private double marched(Delivery delivery) {
        march.read(delivery, Hand.RIGHT, dry, film);
        return march.arrivalBoard();
    }

    @Benchmark
    public double ours() {
        return marched(next());
    }

    @Benchmark
    public double oursWithOil() {
        march.read(next(), Hand.RIGHT, usual, film);
        return march.arrivalBoard();
    }

    /** Four shots: a quarter of this is one. */
    @Benchmark
    public double fourTogether() {
        together.clear();
        for (int i = 0; i < MarchTogether.BALLS; i++) {
            together.add(next(), Hand.RIGHT, dry, film, 0);
        }
        together.run();
        return together.arrivalBoard(0) + together.arrivalBoard(3);
    }

    @Benchmark
    public double commonsMathDormandPrince853() {
        return path.arrivalBoard(next(), dormandPrince853);
    }

    @Benchmark
    public double commonsMathDormandPrince54() {
        return path.arrivalBoard(next(), dormandPrince54);
    }

    private Delivery next() {
        shot = (shot + 1) % SHOTS;
        return shots[shot];
    }
}
