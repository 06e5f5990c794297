package lanetide.cli.scenario.key;

import static lanetide.cli.scenario.key.Key.optional;
import static lanetide.cli.scenario.key.Key.required;
import static lanetide.cli.scenario.key.Key.usual;

import java.util.List;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Laws;
import lanetide.squads.model.Scoring;

/** Keys of what an event is judged by: scoring, laws, fairness and costs. */
public final class RuleKeys {
    /** How the event is scored. */
    public static final List<Key> SCORING = List.of(
            usual(
                    "system",
                    "name",
                    "traditional or current-frame",
                    Scoring.USUAL.system().id()),
            optional("noTap", "pins", "pins on a new rack that count as a strike", "9 pins", "10 pins"),
            optional("fouls", "%", "share of balls that are fouls", "0.1 %", Defaults.FOULS),
            optional("handicap", "block", "pins added for what an average lacks", "a block", "none"));

    /** Handicap. */
    public static final List<Key> HANDICAP = List.of(
            required("base", "pins", "average that gets no handicap", "200 pins to 230 pins"),
            required("share", "%", "share of base less average that is added", "80 % to 100 %"),
            optional(
                    "averages",
                    "pins",
                    "average by level of skill, for those who have none of their own",
                    "{scratch: 205 pins, league: 185 pins}",
                    "each entry's own"));

    /** The laws. */
    public static final List<Key> LAWS = List.of(
            usual(
                    "friction",
                    "name",
                    "mixed-lubrication or exponential-stribeck",
                    Laws.USUAL.friction().id()),
            usual(
                    "split",
                    "name",
                    "forward-roll, walker-fetsko, or none (balls move no oil)",
                    Laws.USUAL.split().id()));

    /** What counts as fair. */
    public static final List<Key> FAIRNESS = List.of(
            optional(
                    "margin",
                    "pins",
                    "largest advantage, in pins a game, that still counts as fair",
                    "1 pin to 4 pins",
                    Defaults.MARGIN),
            optional(
                    "limit",
                    "boards",
                    "move of the windows at which a lane counts as failed (reoil)",
                    "1 board to 3 boards",
                    Defaults.LIMIT));

    /** What oiling costs, and what it saves, in a currency of the user's. */
    public static final List<Key> COSTS = List.of(
            optional("currency", "text", "short name of the currency", "EUR", Costs.USUAL.currency()),
            cost("oilLitre", "a litre of oil", "10 to 40", Costs.USUAL.oilLitre()),
            cost("cleanerLane", "cleaner for one lane", "0.1 to 0.5", Costs.USUAL.cleanerLane()),
            cost("labourHour", "an hour of whoever minds a machine", "15 to 40", Costs.USUAL.labourHour()),
            cost(
                    "laneHour",
                    "what a lane brings in in an hour, lost while it is oiled; 0 before opening",
                    "0 to 30",
                    Costs.USUAL.laneHour()),
            cost("pin", "worth of one bowler's expected game not changing by one pin", "0.02 to 1", Costs.USUAL.pin()),
            cost(
                    "unplanned",
                    "how many times as much an oiling costs that stops the play",
                    "2 to 10",
                    Costs.USUAL.unplanned()));

    private RuleKeys() {}

    private static Key cost(String name, String meaning, String typical, double usual) {
        return optional(name, "number", meaning, typical, Defaults.plain(usual));
    }
}
