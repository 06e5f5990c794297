package lanetide.oilflow;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.LineSearch;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Looking for a line: over all angles, near the present line, and by moves of two and one. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class LineBenchmark {
    private final Catalogue catalogue = Catalogue.shipped();
    private final Contact contact = Contact.between(
            BallSpec.of(catalogue.covers().get("medium-reactive")),
            catalogue.surfaces().get("hard-synthetic"));
    private final Player player = new Player(
            catalogue.styles().get("tweener"),
            new ReleaseSpread(0.5 * LaneGeometry.BOARD_M, StrictMath.toRadians(0.17), 0.012, 0.03),
            Hand.RIGHT,
            contact);
    private final OilPattern pattern = OilPattern.of("bench", 40 * LaneGeometry.FOOT_M, 25, 3);
    private final OilFilm film = OilFilm.fresh(pattern, LaneGrid.DEFAULT);
    private final LineFinder finder = new LineFinder(new RowMarch(LaneGrid.DEFAULT), new PinCarry());
    private final LineSearch search = new LineSearch(finder);
    private final Line present = start();

    /** A home line found anew, and the move from it. */
    @Benchmark
    public Line start() {
        return new HomeLines(finder, pattern, own -> List.of(contact))
                .start(player, film)
                .orElseThrow();
    }

    @Benchmark
    public Optional<Line> free() {
        return search.free(player, film);
    }

    @Benchmark
    public Optional<Line> near() {
        return search.near(player, film, present);
    }

    @Benchmark
    public Optional<Line> moveToPocket() {
        return finder.moveToPocket(player, film, present.moved(3));
    }
}
