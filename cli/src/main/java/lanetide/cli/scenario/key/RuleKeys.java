package lanetide.cli.scenario.key;

import java.util.Map;
import lanetide.cli.scenario.key.Form.Choice;
import lanetide.cli.scenario.key.Form.Clock;
import lanetide.cli.scenario.key.Form.Shares;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.cli.scenario.key.Form.Text;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.squads.fairness.FairnessPlan;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Laws;
import lanetide.squads.model.Scoring;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.score.ScoreCard;
import lanetide.squads.score.ScoringSystem;

/** Keys of what an event is judged by: scoring, laws, fairness and costs. */
public final class RuleKeys {
    private static final String REASON = "usual; its reasons are in oilflow/README.md";
    private static final Costs USUAL = Costs.USUAL;

    /** How the event is scored. */
    public static final Block SCORING = new Block("scoring");

    public static final Key<ScoringSystem> SYSTEM = SCORING.key(
                    "system",
                    new Choice<>("way of scoring", ByName.of(ScoringSystem.values(), ScoringSystem::id)),
                    "traditional or current-frame")
            .usual(Scoring.USUAL.system());
    public static final Key<Integer> NO_TAP = SCORING.key(
                    "noTap",
                    Form.count(Measure.PINS, "pins", 1, ScoreCard.PINS),
                    "pins on a new rack that count as a strike")
            .usual("9 pins", Scoring.USUAL.strikePins());
    public static final Key<Double> FOULS = SCORING.key("fouls", Form.share(0, 0.2), "share of balls that are fouls")
            .assumed("0.1 %", 0.0, Sources.ASSUMPTION);
    public static final Key<Void> WITH_HANDICAP = SCORING.key(
                    "handicap", Structure.BLOCK, "pins added for what an average lacks")
            .optional("a block", "none");

    /** Handicap. */
    public static final Block HANDICAP = new Block("scoring.handicap");

    public static final Key<Integer> BASE = HANDICAP.key(
                    "base", Form.count(Measure.PINS, "pins", 1, ScoreCard.PERFECT), "average that gets no handicap")
            .required("200 pins to 230 pins");
    public static final Key<Double> SHARE = HANDICAP.key(
                    "share",
                    Form.quantity(Measure.SHARE, "%", Range.above(0, 1)),
                    "share of base less average that is added")
            .required("80 % to 100 %");
    public static final Key<Map<String, Integer>> AVERAGES = HANDICAP.key(
                    "averages",
                    new Shares<>(Form.count(Measure.PINS, "pins", 0, ScoreCard.PERFECT)),
                    "average by level of skill, for those who have none of their own")
            .optional("{scratch: 205 pins, league: 185 pins}", "each entry's own");

    /** The laws. */
    public static final Block LAWS = new Block("laws");

    public static final Key<FrictionModel> FRICTION = LAWS.key(
                    "friction",
                    new Choice<>("friction law", ByName.of(FrictionModel.values(), FrictionModel::id)),
                    "how friction falls with oil")
            .assumed(Laws.USUAL.friction(), REASON);
    public static final Key<SplitModel> SPLIT = LAWS.key(
                    "split",
                    new Choice<>("split law", ByName.of(SplitModel.values(), SplitModel::id)),
                    "how oil parts between lane and ball; with none, lanes stay as they are laid")
            .assumed(Laws.USUAL.split(), REASON);

    /** What counts as fair. */
    public static final Block FAIRNESS = new Block("fairness");

    public static final Key<Double> MARGIN = FAIRNESS.key(
                    "margin",
                    Form.quantity(Measure.PINS, "pins", Range.above(0, FairnessPlan.MAX_MARGIN_PINS)),
                    "largest advantage, in pins a game, that still counts as fair")
            .optional("1 pin to 4 pins", Measure.PINS.usualUnit().write(Range.round(FairnessPlan.DEFAULT_MARGIN_PINS)));
    public static final Key<Double> LIMIT = FAIRNESS.key(
                    "limit",
                    Form.quantity(Measure.BOARDS, "boards", Range.above(0, ReoilPlan.MAX_LIMIT_BOARDS)),
                    "move of the windows at which a lane counts as failed (reoil)")
            .assumed("1 board to 3 boards", ReoilPlan.DEFAULT_LIMIT_BOARDS, Sources.ASSUMPTION);

    /** What oiling costs, and what it saves, in a currency of the user's. */
    public static final Block COSTS = new Block("costs");

    public static final Key<String> CURRENCY =
            COSTS.key("currency", new Text(true), "short name of the currency").usual("EUR", USUAL.currency());
    public static final Key<Double> OIL_LITRE = cost("oilLitre", "a litre of oil", "10 to 40", USUAL.oilLitre());
    public static final Key<Double> CLEANER_LANE =
            cost("cleanerLane", "cleaner for one lane", "0.1 to 0.5", USUAL.cleanerLane());
    public static final Key<Double> LABOUR_HOUR =
            cost("labourHour", "an hour of whoever minds a machine", "15 to 40", USUAL.labourHour());
    public static final Key<Double> LANE_HOUR = cost(
            "laneHour",
            "what a lane brings in in an hour, lost while it is oiled; 0 before opening",
            "0 to 30",
            USUAL.laneHour());
    public static final Key<Long> OPENS = COSTS.key(
                    "opens", new Clock(), "when the centre opens; until then a lane brings nothing in")
            .optional("\"09:00\"", "always open");
    public static final Key<Double> PIN =
            cost("pin", "worth of one bowler's expected game not changing by one pin", "0.02 to 1", USUAL.pin());
    public static final Key<Double> UNPLANNED = COSTS.key(
                    "unplanned", Form.number(1, 1000), "how many times as much an oiling costs that stops the play")
            .assumed("2 to 10", USUAL.unplanned(), Sources.ASSUMPTION);

    private RuleKeys() {}

    private static Key<Double> cost(String name, String meaning, String typical, double usual) {
        return COSTS.key(name, Form.number(0, 1_000_000), meaning).assumed(typical, usual, Sources.ASSUMPTION);
    }
}
