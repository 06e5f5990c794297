package lanetide.squads.play;

import java.util.function.BiFunction;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.model.Level;
import lanetide.squads.model.PinsWithoutOil;
import lanetide.squads.result.ThrownBall;
import org.apache.commons.rng.UniformRandomProvider;

/** Throws balls that meet no oil: what they leave is drawn by how often bowlers of the level leave it. */
final class BallsWithoutOil implements Balls {
    /** Time from release to the pins (ms), mean over the styles in play; 2.0 to 2.6 s is published for usual speeds. */
    private static final long RIDE_MS = 2_350;

    /** The 7 pin, and the pins 1, 2 and 4. */
    private static final int ONE_LEFT = 1 << 6;

    private static final int SEVERAL_LEFT = 0b1011;

    private final BiFunction<OilPattern, Level, PinsWithoutOil.Shares> pins;
    private long thrown;

    /** Pins fall as often as is known of a level on a pattern. */
    BallsWithoutOil(BiFunction<OilPattern, Level, PinsWithoutOil.Shares> pins) {
        this.pins = pins;
    }

    @Override
    public int throwBall(BowlerInPlay bowler, Mates mates, LaneInPlay lane, long timeMs) {
        thrown++;
        PinsWithoutOil.Shares shares =
                pins.apply(lane.pattern().orElseThrow(), bowler.bowler().level());
        UniformRandomProvider luck = bowler.luck().pins();
        if (bowler.standing() != Rack.FULL) {
            return luck.nextDouble() < shares.cleared() ? 0 : bowler.standing();
        }
        if (luck.nextDouble() < shares.strikes()) {
            return 0;
        }
        return luck.nextDouble() < shares.ones() ? ONE_LEFT : SEVERAL_LEFT;
    }

    @Override
    public long travelMs() {
        return RIDE_MS;
    }

    /**
     * There is no path without oil.
     *
     * @throws IllegalStateException always
     */
    @Override
    public ThrownBall lastBall() {
        throw new IllegalStateException("a ball that meets no oil has no path");
    }

    @Override
    public long thrown() {
        return thrown;
    }
}
