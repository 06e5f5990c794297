package lanetide.cli.scenario.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import lanetide.cli.scenario.key.Form.Choice;
import lanetide.squads.model.Counting;
import lanetide.squads.model.TieRule;

/** Keys of who goes on from qualifying. */
public final class CutKeys {
    private static final int MAX_PLACES = 10_000;

    /** The cut. */
    public static final Block CUT = new Block("cut");

    public static final Key<Integer> PLACES =
            CUT.key("places", Form.whole(1, MAX_PLACES), "how many go on").optional("8 to 32", "share");
    public static final Key<Double> SHARE = CUT.key(
                    "share",
                    Form.quantity(Measure.SHARE, "%", Range.above(0, 0.99)),
                    "which share of those who are entered goes on; a started place counts")
            .optional("25 % to 35 %", "places");
    public static final Key<TieRule> TIES = CUT.key(
                    "ties",
                    new Choice<>("rule for ties", ByName.of(TieRule.values(), TieRule::id)),
                    "who goes first with the same total: the higher last-game, the higher high-game, the lot, or all go on")
            .assumed(TieRule.LOT, Sources.TRADE);
    public static final Key<Boolean> HANDICAP = CUT.key(
                    "handicap",
                    new Choice<>("rule for the handicap", handicap()),
                    "whether the handicap counts in the totals")
            .usual(true);
    public static final Key<Counting> COUNTS = CUT.key(
                    "counts",
                    new Choice<>("rule for who is entered again", ByName.of(Counting.values(), Counting::id)),
                    "for who is entered in several squads: the best of them, or the sum of all")
            .usual(Counting.BEST);

    private CutKeys() {}

    private static Map<String, Boolean> handicap() {
        Map<String, Boolean> rules = new LinkedHashMap<>();
        rules.put("counted", true);
        rules.put("left-out", false);
        return Collections.unmodifiableMap(rules);
    }
}
