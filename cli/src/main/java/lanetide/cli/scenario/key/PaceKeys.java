package lanetide.cli.scenario.key;

import lanetide.cli.scenario.key.Form.Choice;
import lanetide.cli.scenario.key.Form.Quantity;
import lanetide.squads.model.PaceOfPlay;

/** Keys of how long things take. */
public final class PaceKeys {
    private static final PaceOfPlay USUAL = PaceOfPlay.USUAL;
    private static final Quantity<Long> TIMES = Form.time("s", 30 * Sources.MINUTE_MS);

    /** How long things take. */
    public static final Block PACE = new Block("pace");

    public static final Key<Long> FIRST_SHOT =
            pace("firstShot", "mean from lane free to first ball", "15 s to 30 s", USUAL.firstShotMs());
    public static final Key<Long> SPARE_SHOT =
            pace("spareShot", "mean from the ball's return to the next ball", "10 s to 20 s", USUAL.spareShotMs());
    public static final Key<Double> SPREAD = PACE.key(
                    "spread", Form.share(0, 1), "standard deviation of these two, of their mean")
            .assumed("10 % to 40 %", USUAL.spread(), Sources.ASSUMPTION);
    public static final Key<Long> PINSETTER =
            pace("pinsetter", "from ball at the pins to pins set", "10 s to 20 s", USUAL.pinsetterMs());
    public static final Key<Long> BALL_RETURN =
            pace("ballReturn", "from ball at the pins to ball back", "10 s to 20 s", USUAL.ballReturnMs());
    public static final Key<Integer> COURTESY = PACE.key(
                    "courtesy", new Choice<>("courtesy", Names.COURTESY), "lanes on which a neighbour is let go first")
            .usual(USUAL.courtesy().lanes());
    public static final Key<Long> APPROACH = PACE.key(
                    "approach", Form.time("s", Sources.MINUTE_MS), "on the approach before a release")
            .assumed("4 s to 10 s", USUAL.courtesy().approachMs(), Sources.ASSUMPTION);
    public static final Key<Long> MOVE_PER_PAIR =
            pace("movePerPair", "walk to the neighbouring pair", "10 s to 30 s", USUAL.movePerPairMs());
    public static final Key<Long> SETTLE = PACE.key(
                    "settle", Form.time("s or min", 30 * Sources.MINUTE_MS), "on a new pair before its first shot")
            .assumed("1 min to 3 min", USUAL.settleMs(), Sources.TRADE);

    private PaceKeys() {}

    private static Key<Long> pace(String name, String meaning, String typical, long usualMs) {
        return PACE.key(name, TIMES, meaning).assumed(typical, usualMs, Sources.TRADE);
    }
}
