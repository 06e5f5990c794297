package lanetide.cli.scenario.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import lanetide.cli.scenario.key.Form.Choice;
import lanetide.cli.scenario.key.Form.Clock;
import lanetide.cli.scenario.key.Form.Name;
import lanetide.cli.scenario.key.Form.Quantity;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.cli.scenario.key.Form.Text;

/** Keys of the event and its course: squads, breaks and moves. */
public final class EventKeys {
    /** Largest seed: twelve digits, which every program that reads JSON keeps exact. */
    public static final long MAX_SEED = 999_999_999_999L;

    /** Most games a squad bowls. */
    static final int MAX_GAMES = 100;

    private static final Quantity<Long> SEEDS =
            new Quantity<>(Measure.NUMBER, "whole number", Range.between(0, MAX_SEED), true, number -> (long) number);
    private static final Quantity<Long> PRACTICES = Form.time("min", Sources.HOUR_MS * 2);

    /** The whole file. */
    public static final Block SCENARIO = new Block("");

    public static final Key<String> NAME =
            SCENARIO.required("name", new Text(false), "what the event is called", "Club night");
    public static final Key<Long> SEED =
            SCENARIO.assumed("seed", SEEDS, "same scenario and seed, same answer", "", 1L, "any seed would do");
    public static final Key<Void> CENTRE =
            SCENARIO.required("centre", Structure.BLOCK, "the lanes in use", "a block with lanes and surface");
    public static final Key<Void> PATTERN =
            SCENARIO.required("pattern", Structure.BLOCK, "the oil pattern", "a block with length, volume and ratio");
    public static final Key<Integer> GAMES =
            SCENARIO.required("games", Form.whole(1, MAX_GAMES), "games a bowler plays in one squad", "3 to 8");
    public static final Key<Long> PRACTICE = SCENARIO.assumed(
            "practice",
            PRACTICES,
            "on the starting pair before the first game",
            "5 min to 15 min",
            600_000L,
            Sources.TRADE);
    public static final Key<Void> MOVES = SCENARIO.optional(
            "rotation", Structure.NAME_OR_BLOCK, "how groups move over the pairs", "stay or right", "stay");
    public static final Key<Void> SQUADS = SCENARIO.required(
            "squads", Structure.LIST, "who plays when, in order of start", "- {id: A, start: \"08:00\", oil: fresh}");
    public static final Key<Void> FIELD = SCENARIO.optional(
            "field",
            Structure.BLOCK,
            "the bowlers of every squad by shares",
            "a block",
            "entries, or each squad's own");
    public static final Key<Void> ENTRIES = SCENARIO.optional(
            "entries", Structure.LIST_OR_FILE, "the bowlers one by one, or a CSV table of them", "a list", "field");
    public static final Key<Void> CHANGES = SCENARIO.optional(
            "changes",
            Structure.LIST,
            "who does not bowl as listed: absent, late or replaced",
            "- {bowler: A-07, from: 3}",
            "none");
    public static final Key<Void> PACE =
            SCENARIO.optional("pace", Structure.BLOCK, "how long things take", "a block", "the usual pace");
    public static final Key<Void> BOWLERS = SCENARIO.optional(
            "bowlers", Structure.BLOCK, "what all bowlers have in common", "a block", "bowlers as they are");
    public static final Key<Void> SCORING = SCENARIO.optional(
            "scoring", Structure.BLOCK, "how the event is scored", "a block", "by the rules, without handicap");
    public static final Key<Void> INCIDENTS = SCENARIO.optional(
            "incidents", Structure.BLOCK, "what can go wrong with lanes, and what is done then", "a block", "nothing");
    public static final Key<Void> LAWS =
            SCENARIO.optional("laws", Structure.BLOCK, "laws of friction and oil", "a block", "the usual laws");
    public static final Key<Void> FAIRNESS = SCENARIO.optional(
            "fairness", Structure.BLOCK, "what counts as fair", "{margin: 2 pins}", "the usual margin");
    public static final Key<Void> COSTS = SCENARIO.optional(
            "costs", Structure.BLOCK, "what oiling costs, and what it saves", "a block", "assumed costs");
    public static final Key<Void> SURFACES = own("surfaces", "lane surfaces");
    public static final Key<Void> COVERS = own("covers", "ball covers");
    public static final Key<Void> STYLES = own("styles", "playing styles");
    public static final Key<Void> LEVELS = own("levels", "levels of skill");

    /** One squad. */
    public static final Block SQUAD = new Block("squads");

    public static final Key<String> SQUAD_ID = SQUAD.required("id", new Text(true), "name, alone in the event", "A");
    public static final Key<Long> START =
            SQUAD.required("start", new Clock(), "start of practice", "\"08:00\" or \"day 2 08:00\"");
    public static final Key<String> OIL = SQUAD.required(
            "oil",
            new Name("oil", String.join(", ", Names.OILINGS.keySet())),
            "fresh (cleaned, then oiled), over (oiled over what is left) or none",
            "fresh");
    public static final Key<Integer> SQUAD_GAMES =
            SQUAD.optional("games", Form.whole(1, MAX_GAMES), "of this squad", "3 to 8", "the event's");
    public static final Key<Long> SQUAD_PRACTICE =
            SQUAD.optional("practice", PRACTICES, "of this squad", "5 min to 15 min", "the event's");
    public static final Key<Integer> SQUAD_BOWLERS = SQUAD.optional(
            "bowlers",
            Form.whole(1, BowlerKeys.MAX_BOWLERS),
            "of this squad, in place of perSquad",
            "4 to 6 a pair",
            "perSquad");
    public static final Key<Void> SQUAD_FIELD =
            SQUAD.optional("field", Structure.BLOCK, "this squad's own field", "a block", "the event's");
    public static final Key<Void> BREAKS =
            SQUAD.optional("breaks", Structure.LIST, "when its groups rest", "- {after: 3, length: 15 min}", "none");
    public static final Key<Integer> SQUAD_MACHINES =
            SQUAD.optional("machines", CentreKeys.FLEET, "lane machines used before it", "1", "all of the centre's");

    /** A break. */
    public static final Block BREAK = new Block("squads.breaks");

    public static final Key<Integer> AFTER =
            BREAK.optional("after", Form.whole(1, MAX_GAMES), "game after which a group rests", "3", "at");
    public static final Key<Long> AT =
            BREAK.optional("at", new Clock(), "a group rests after the game it plays then", "\"12:00\"", "after");
    public static final Key<Long> LENGTH = BREAK.required(
            "length", Form.time("min", Range.above(0, 12 * Sources.HOUR_MS)), "how long", "10 min to 60 min");

    /** How groups move. */
    public static final Block ROTATION = new Block("rotation");

    public static final Key<String> DESIGN = ROTATION.required(
            "design",
            new Choice<>("rotation", RotationDesigns.all()),
            "stay, right, left, turning, apart, balanced, part-balanced, drawn, searched or listed",
            "right");
    public static final Key<Integer> MOVE = ROTATION.optional(
            "move",
            Form.count(Measure.PAIRS, "pairs", 1, 100),
            "how far at each move (right, left, turning, apart)",
            "1 pair or 2 pairs",
            "1 pair; turning 2 pairs");
    public static final Key<Integer> EVERY = ROTATION.assumed(
            "every",
            Form.count(Measure.GAMES, "games", 1, MAX_GAMES),
            "games on a pair before the next move (right, left)",
            "",
            1,
            Sources.TRADE);
    public static final Key<Void> TABLE = ROTATION.optional(
            "table", Structure.TABLE, "one row a game, in it each group's pair (listed)", "[1-2, 3-4]", "none");
    public static final Key<Boolean> REPEATS = ROTATION.usual(
            "repeats",
            new Choice<>("rule for repeats", repeats()),
            "whether a group may come back to a pair",
            "forbidden",
            true);

    private EventKeys() {}

    private static Key<Void> own(String name, String what) {
        return SCENARIO.optional(
                name, Structure.BLOCK, what + " of your own, by name", "a block", "the shipped ones alone");
    }

    private static Map<String, Boolean> repeats() {
        Map<String, Boolean> rules = new LinkedHashMap<>();
        rules.put("allowed", true);
        rules.put("forbidden", false);
        return Collections.unmodifiableMap(rules);
    }
}
