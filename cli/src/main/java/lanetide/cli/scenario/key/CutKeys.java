package lanetide.cli.scenario.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import lanetide.cli.scenario.key.Form.Choice;
import lanetide.cli.scenario.key.Form.Clock;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Counting;
import lanetide.squads.model.TieRule;
import lanetide.squads.score.ScoreCard;

/** Keys of who goes on from qualifying. */
public final class CutKeys {
    private static final int MAX_PLACES = 10_000;
    private static final int MAX_MATCH_GAMES = 10;

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

    public static final Key<Void> FINALS = CUT.key(
                    "finals", Structure.BLOCK, "matches of two that those who go on bowl, on the lanes as they are")
            .optional("{form: round-robin, start: \"20:00\"}", "none");

    /** The finals. */
    public static final Block OF_FINALS = new Block("cut.finals");

    public static final Key<Boolean> IS_ROUND_ROBIN = OF_FINALS
            .key(
                    "form",
                    new Choice<>("form of finals", forms()),
                    "round-robin (everybody meets everybody, pins and bonus decide) or head-to-head (by matches)")
            .required("round-robin");
    public static final Key<Long> FINALS_START = OF_FINALS
            .key("start", new Clock(), "start of practice, after all squads")
            .required("\"20:00\" or \"day 2 20:00\"");
    public static final Key<Conditioning> FINALS_OIL = OF_FINALS
            .key("oil", new Choice<>("oil", Names.OILINGS), "fresh, over, ends or none, as before a squad")
            .usual(Conditioning.NONE);
    public static final Key<Long> FINALS_PRACTICE = OF_FINALS
            .key("practice", Form.time("min", Sources.HOUR_MS * 2), "on the pair of the first match")
            .assumed(300_000L, Sources.TRADE);
    public static final Key<Integer> MATCH_GAMES = OF_FINALS
            .key("games", Form.whole(1, MAX_MATCH_GAMES), "games of a match")
            .usual(1);
    public static final Key<Integer> BONUS = OF_FINALS
            .key(
                    "bonus",
                    Form.count(Measure.PINS, "pins", 0, ScoreCard.PERFECT),
                    "for a won match, half of it for a tie (round-robin)")
            .assumed(30, Sources.TRADE);
    public static final Key<Void> MATCHES = OF_FINALS
            .key(
                    "matches",
                    Structure.MATCHES,
                    "one row a round; two seeds, or w and l with the number of an earlier match (head-to-head)")
            .optional("[1-4, 2-3], [w1-w2]", "none");

    public static final Key<Void> FINALS_PAIRS = OF_FINALS
            .key("pairs", Structure.PAIRS, "pairs of lanes for the matches, the first match of a round on the first")
            .optional("[5-6, 3-4]", "those that groups are sent to, from the left");

    private CutKeys() {}

    private static Map<String, Boolean> forms() {
        Map<String, Boolean> forms = new LinkedHashMap<>();
        forms.put("round-robin", true);
        forms.put("head-to-head", false);
        return Collections.unmodifiableMap(forms);
    }

    private static Map<String, Boolean> handicap() {
        Map<String, Boolean> rules = new LinkedHashMap<>();
        rules.put("counted", true);
        rules.put("left-out", false);
        return Collections.unmodifiableMap(rules);
    }
}
