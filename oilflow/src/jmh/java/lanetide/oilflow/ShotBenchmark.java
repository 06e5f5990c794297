package lanetide.oilflow;

import java.util.concurrent.TimeUnit;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One shot down the lane: reading the film, and wearing it. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class ShotBenchmark {
    private final Catalogue catalogue = Catalogue.shipped();
    private final PlayingStyle style = catalogue.styles().get("tweener");
    private final BallSpec ball = BallSpec.of(catalogue.covers().get("medium-reactive"));
    private final Contact contact = Contact.between(ball, catalogue.surfaces().get("hard-synthetic"));
    private final OilPattern pattern = OilPattern.of("bench", 40 * LaneGeometry.FOOT_M, 25, 3);
    private final OilFilm fresh = OilFilm.fresh(pattern, LaneGrid.DEFAULT);
    private final OilFilm worn = OilFilm.fresh(pattern, LaneGrid.DEFAULT);
    private final BallOil oil = new BallOil(ball, BallOil.DEFAULT_TOWEL_SHARE);
    private final RowMarch march = new RowMarch(LaneGrid.DEFAULT);
    private int shot;

    /** Oil comes back after every 300 shots, so that the film stays like one in play. */
    @Benchmark
    public double wear() {
        if (shot % 300 == 0) {
            worn.strip();
            worn.lay(pattern);
        }
        march.wear(next(), Hand.RIGHT, contact, worn, oil);
        oil.rest(60);
        return march.arrivalBoard();
    }

    @Benchmark
    public double read() {
        march.read(next(), Hand.RIGHT, contact, fresh);
        return march.arrivalBoard();
    }

    private Delivery next() {
        shot++;
        double board = 16 + shot % 17 * 0.1;
        return Delivery.of(
                style.release(), ball.radiusM(), LaneGeometry.boardToMetres(board), style.naturalLaunchRad());
    }
}
