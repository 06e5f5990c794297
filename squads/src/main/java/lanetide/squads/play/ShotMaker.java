package lanetide.squads.play;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.bowler.LaneRead;
import lanetide.squads.bowler.Sight;
import lanetide.squads.equipment.Physics;
import lanetide.squads.result.ThrownBall;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;

/** Throws balls: the bowler's aim, the scatter of his release, the ball on the lane's present film, the pins. */
final class ShotMaker implements Balls {
    /** Error of a bowler's reading of the angle at the pins (rad; one degree, assumption). */
    private static final double SEES_ANGLE_RAD = StrictMath.toRadians(1);

    private final RowMarch march;
    private final PinCarry carry;
    private final LaneGrid grid;
    /** What bowlers know of spares on each fresh pattern. */
    private final Map<OilPattern, SpareLines> spareLines = new HashMap<>();

    private OilPattern lastPattern;
    private SpareLines lastSpareLines;
    /** On lanes that stay as they are nobody expects anything else, so that a seat is worth nothing there. */
    private final boolean oilMoves;

    private long thrown;
    private Line lastMeant;
    private Line lastThrown;
    private Release lastRelease;

    ShotMaker(Physics physics) {
        this.grid = physics.grid();
        this.march = new RowMarch(physics.grid());
        this.carry = physics.carry();
        this.oilMoves = !physics.lanesStay();
    }

    @Override
    public long thrown() {
        return thrown;
    }

    @Override
    public long travelMs() {
        return Math.round(march.timeS() * 1000);
    }

    @Override
    public ThrownBall lastBall() {
        return new ThrownBall(
                lastMeant,
                lastThrown,
                lastRelease,
                march.timeS(),
                march.reachedPins(),
                march.arrivalBoard(),
                march.entryAngleRad());
    }

    /** Lets the bowler, and those he bowls with, learn from a full rack. */
    @Override
    public int throwBall(BowlerInPlay bowler, Mates mates, LaneInPlay lane, long timeMs) {
        thrown++;
        return bowler.standing() == Rack.FULL ? atFullRack(bowler, mates, lane, timeMs) : atSpare(bowler, lane, timeMs);
    }

    private int atFullRack(BowlerInPlay bowler, Mates mates, LaneInPlay lane, long timeMs) {
        if (bowler.agent().on(lane.number()) instanceof KnowingAgent seesOil) {
            seesOil.look(lane.number(), lane.film());
        }
        stepUp(bowler, lane);
        Line meant = bowler.agent().line(lane.number());
        Line thrown = roll(bowler, bowler.player().style().release(), meant, bowler.strikeBall(), lane, timeMs);
        double missAtArrows = thrown.arrowsBoard() - meant.arrowsBoard();
        double arrival = march.arrivalBoard();
        double seenError = bowler.bowler().level().adaptation().seesBoards()
                * bowler.luck().sight().sample();
        double entryRad = march.entryAngleRad();
        double seenEntryRad = entryRad + SEES_ANGLE_RAD * bowler.luck().sight().sample();
        double luck = bowler.luck().pins().nextDouble();
        bowler.spendStrength();
        if (!march.reachedPins()) {
            return Rack.FULL;
        }
        Optional<LaneRead> read =
                bowler.agent().learn(lane.number(), new Sight(arrival + seenError, missAtArrows, seenEntryRad));
        if (oilMoves && read.isPresent()) {
            mates.watch(bowler, lane, read.get());
        }
        double massKg = bowler.strikeBall().contact().ball().core().massKg();
        return carry.leaveOfFirstBall(arrival, entryRad, march.speedMps(), massKg, luck);
    }

    private void stepUp(BowlerInPlay bowler, LaneInPlay lane) {
        if (oilMoves) {
            bowler.agent()
                    .stepUp(
                            lane.number(),
                            lane.gamesOnOil(),
                            lane.told(bowler.player().hand()));
        } else {
            bowler.agent().stepUp(lane.number(), 0, OptionalDouble.empty());
        }
    }

    private int atSpare(BowlerInPlay bowler, LaneInPlay lane, long timeMs) {
        SpareLines.Known known = bowler.spareLines(spareLines(lane.pattern().orElseThrow()));
        Line meant = known.to(carry.target(bowler.standing()));
        roll(bowler, known.release(), meant, bowler.spareBall(), lane, timeMs);
        double luck = bowler.luck().pins().nextDouble();
        return march.reachedPins()
                ? carry.leaveOfSpareBall(bowler.standing(), march.arrivalBoard(), march.entryAngleRad(), luck)
                : bowler.standing();
    }

    private SpareLines spareLines(OilPattern pattern) {
        if (pattern != lastPattern) {
            lastPattern = pattern;
            lastSpareLines =
                    spareLines.computeIfAbsent(pattern, laid -> new SpareLines(march, OilFilm.fresh(laid, grid)));
        }
        return lastSpareLines;
    }

    /** Rolls a ball as well as the bowler can; answers the line on which it left his hand. */
    private Line roll(
            BowlerInPlay bowler,
            Release release,
            Line meant,
            BowlerInPlay.BallInPlay ball,
            LaneInPlay lane,
            long timeMs) {
        ReleaseSpread spread = bowler.player().spread();
        double scatter = bowler.scatter();
        NormalizedGaussianSampler miss = bowler.luck().release();
        double laydownM =
                LaneGeometry.boardToMetres(meant.laydownBoard()) + scatter * spread.laydownM() * miss.sample();
        double launchRad = meant.launchRad() + scatter * spread.launchRad() * miss.sample();
        double speedFactor = bowler.speedFactor() + scatter * spread.speedShare() * miss.sample();
        double spinFactor = 1 + scatter * spread.spinShare() * miss.sample();
        lastRelease = release.scaled(speedFactor, spinFactor);
        lastMeant = meant;
        lastThrown = new Line(LaneGeometry.metresToBoard(laydownM), launchRad);
        Delivery delivery = Delivery.of(lastRelease, ball.contact().ball().radiusM(), laydownM, launchRad);
        march(delivery, bowler, ball, lane, timeMs);
        return lastThrown;
    }

    /** Lanes that stay as they are laid differ from others in nothing else: balls are thrown there as in play. */
    private void march(
            Delivery delivery, BowlerInPlay bowler, BowlerInPlay.BallInPlay ball, LaneInPlay lane, long timeMs) {
        if (oilMoves) {
            march.wear(delivery, bowler.player().hand(), ball.contact(), lane.film(), ball.readyAt(timeMs));
        } else {
            march.readInPlay(delivery, bowler.player().hand(), ball.contact(), lane.film());
        }
    }
}
