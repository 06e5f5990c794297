package lanetide.cli.scenario.key;

import static lanetide.cli.scenario.key.Key.optional;
import static lanetide.cli.scenario.key.Key.required;
import static lanetide.cli.scenario.key.Key.usual;

import java.util.List;

/** Keys of the event and its course: squads, breaks, moves and how long things take. */
public final class EventKeys {
    /** Largest seed: twelve digits, which every program that reads JSON keeps exact. */
    public static final long MAX_SEED = 999_999_999_999L;

    /** The whole file. */
    public static final List<Key> SCENARIO = List.of(
            required("name", "text", "what the event is called", "Club night"),
            usual("seed", "whole number", "same scenario and seed, same answer", Defaults.SEED),
            required("centre", "block", "the lanes in use", "a block with lanes and surface"),
            required("pattern", "block", "the oil pattern", "a block with length, volume and ratio"),
            required("games", "whole number", "games a bowler plays in one squad", "3 to 8"),
            optional(
                    "practice",
                    "min",
                    "on the starting pair before the first game",
                    "5 min to 15 min",
                    Defaults.PRACTICE),
            optional("rotation", "name or block", "how groups move over the pairs", "stay or right", Defaults.ROTATION),
            required("squads", "list", "who plays when, in order of start", "- {id: A, start: \"08:00\", oil: fresh}"),
            optional(
                    "field",
                    "block",
                    "the bowlers of every squad by shares",
                    "a block",
                    "entries, or each squad's own"),
            optional(
                    "entries",
                    "list or file name",
                    "the bowlers one by one, or a CSV table of them",
                    "a list",
                    "field"),
            optional(
                    "changes",
                    "list",
                    "who does not bowl as listed: absent, late or replaced",
                    "- {bowler: A-07, from: 3}",
                    "none"),
            optional("pace", "block", "how long things take", "a block", "the usual pace"),
            optional("bowlers", "block", "what all bowlers have in common", "a block", "bowlers as they are"),
            optional("scoring", "block", "how the event is scored", "a block", "by the rules, without handicap"),
            optional("incidents", "block", "what can go wrong with lanes, and what is done then", "a block", "nothing"),
            optional("laws", "block", "laws of friction and oil", "a block", "the usual laws"),
            optional("fairness", "block", "what counts as fair", "{margin: 2 pins}", "the usual margin"),
            optional("costs", "block", "what oiling costs, and what it saves", "a block", "assumed costs"),
            optional("surfaces", "block", "lane surfaces of your own, by name", "a block", "the shipped ones alone"),
            optional("covers", "block", "ball covers of your own, by name", "a block", "the shipped ones alone"),
            optional("styles", "block", "playing styles of your own, by name", "a block", "the shipped ones alone"),
            optional("levels", "block", "levels of skill of your own, by name", "a block", "the shipped ones alone"));

    /** One squad. */
    public static final List<Key> SQUAD = List.of(
            required("id", "text", "name, alone in the event", "A"),
            required("start", "time of day", "start of practice", "\"08:00\" or \"day 2 08:00\""),
            required("oil", "name", "fresh (cleaned, then oiled), over (oiled over what is left) or none", "fresh"),
            optional("games", "whole number", "of this squad", "3 to 8", "the event's"),
            optional("practice", "min", "of this squad", "5 min to 15 min", "the event's"),
            optional("bowlers", "whole number", "of this squad, in place of perSquad", "4 to 6 a pair", "perSquad"),
            optional("field", "block", "this squad's own field", "a block", "the event's"),
            optional("breaks", "list", "when its groups rest", "- {after: 3, length: 15 min}", "none"),
            optional("machines", "whole number", "lane machines used before it", "1", "all of the centre's"));

    /** A break. */
    public static final List<Key> BREAK = List.of(
            optional("after", "whole number", "game after which a group rests", "3", "at"),
            optional("at", "time of day", "a group rests after the game it plays then", "\"12:00\"", "after"),
            required("length", "min", "how long", "10 min to 60 min"));

    /** How groups move. */
    public static final List<Key> ROTATION = List.of(
            required(
                    "design",
                    "name",
                    "stay, right, left, turning, apart, balanced, part-balanced, drawn, searched or listed",
                    "right"),
            optional(
                    "move",
                    "pairs",
                    "how far at each move (right, left, turning, apart)",
                    "1 pair or 2 pairs",
                    "1 pair; turning 2 pairs"),
            usual("every", "games", "games on a pair before the next move (right, left)", Defaults.EVERY),
            optional(
                    "table", "list of lists", "one row a game, in it each group's pair (listed)", "[1-2, 3-4]", "none"),
            optional(
                    "repeats",
                    "name",
                    "whether a group may come back to a pair: allowed or forbidden",
                    "forbidden",
                    "allowed"));

    /** How long things take. */
    public static final List<Key> PACE = List.of(
            optional("firstShot", "s", "mean from lane free to first ball", "15 s to 30 s", Defaults.FIRST_SHOT),
            optional(
                    "spareShot",
                    "s",
                    "mean from the ball's return to the next ball",
                    "10 s to 20 s",
                    Defaults.SPARE_SHOT),
            optional(
                    "spread",
                    "%",
                    "standard deviation of these two, of their mean",
                    "10 % to 40 %",
                    Defaults.SHOT_SPREAD),
            optional("pinsetter", "s", "from ball at the pins to pins set", "10 s to 20 s", Defaults.PINSETTER),
            optional("ballReturn", "s", "from ball at the pins to ball back", "10 s to 20 s", Defaults.BALL_RETURN),
            usual("courtesy", "name", "none, one or two lanes on which a neighbour is let go first", Defaults.COURTESY),
            optional("approach", "s", "on the approach before a release", "4 s to 10 s", Defaults.APPROACH),
            optional("movePerPair", "s", "walk to the neighbouring pair", "10 s to 30 s", Defaults.MOVE_PER_PAIR),
            optional("settle", "min or s", "on a new pair before its first shot", "1 min to 3 min", Defaults.SETTLE));

    private EventKeys() {}
}
