package lanetide.cli.scenario.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanetide.cli.scenario.key.Form.Choice;
import lanetide.cli.scenario.key.Form.Clock;
import lanetide.cli.scenario.key.Form.Each;
import lanetide.cli.scenario.key.Form.Name;
import lanetide.cli.scenario.key.Form.Quantity;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.cli.scenario.key.Form.Text;

/** Keys of the event and its course: squads, breaks and moves. */
public final class EventKeys {
    /** Largest seed: twelve digits, which every program that reads JSON keeps exact. */
    public static final long MAX_SEED = 999_999_999_999L;

    /** Most games a squad bowls. */
    public static final int MAX_GAMES = 100;

    static final Quantity<Long> SEEDS =
            new Quantity<>(Measure.NUMBER, "whole number", Range.between(0, MAX_SEED), true, number -> (long) number);
    private static final Quantity<Long> PRACTICES = Form.time("min", Sources.HOUR_MS * 2);

    /** The whole file. */
    public static final Block SCENARIO = new Block("");

    public static final Key<String> NAME =
            SCENARIO.key("name", new Text(false), "what the event is called").required("Club night");
    public static final Key<Long> SEED =
            SCENARIO.key("seed", SEEDS, "same scenario and seed, same answer").assumed(1L, "any seed would do");
    public static final Key<Void> CENTRE =
            SCENARIO.key("centre", Structure.BLOCK, "the lanes in use").required("a block with lanes and surface");
    public static final Key<Void> PATTERN = SCENARIO.key("pattern", Structure.BLOCK, "the oil pattern")
            .required("a block with length, volume and ratio");
    public static final Key<Void> PATTERNS = SCENARIO.key("patterns", Structure.BLOCK, "further oil patterns, by name")
            .optional("a block", "the pattern alone");
    public static final Key<Void> LANE_PATTERNS = SCENARIO.key(
                    "lanePatterns", Structure.LIST, "lanes that are laid with another pattern before every squad")
            .optional("- {pattern: Sport, lanes: even pairs}", "the pattern on all lanes");
    public static final Key<Integer> GAMES = SCENARIO.key(
                    "games", Form.whole(1, MAX_GAMES), "games a bowler plays in one squad")
            .required("3 to 8");
    public static final Key<Long> PRACTICE = SCENARIO.key(
                    "practice", PRACTICES, "on the starting pair before the first game")
            .assumed("5 min to 15 min", 600_000L, Sources.TRADE);
    public static final Key<Void> MOVES = SCENARIO.key(
                    "rotation", Structure.NAME_OR_BLOCK, "how groups move over the pairs")
            .optional("stay or right", "stay");
    public static final Key<Void> SQUADS = SCENARIO.key("squads", Structure.LIST, "who plays when, in order of start")
            .required("- {id: A, start: \"08:00\", oil: fresh}");
    public static final Key<Void> FIELD = SCENARIO.key(
                    "field",
                    Structure.BLOCK,
                    "the bowlers of every squad by shares; beside entries, what these do not say")
            .optional("a block", "entries, or each squad's own");
    public static final Key<Void> FIELDS = SCENARIO.key(
                    "fields", Structure.BLOCK, "fields of bowlers by name, for squads to be drawn from")
            .optional("a block for each name", "none");
    public static final Key<Void> ENTRIES = SCENARIO.key(
                    "entries", Structure.LIST_OR_FILE, "the bowlers one by one, or a CSV table of them")
            .optional("a list", "field");
    public static final Key<Void> DRAW = SCENARIO.key(
                    "draw", Structure.BLOCK, "entries without groups are drawn into them by lot, within rules")
            .optional("{hands: even, styles: even}", "groups are filled in the order of the list");
    public static final Key<Void> CHANGES = SCENARIO.key(
                    "changes", Structure.LIST, "who does not bowl as listed: absent, late or replaced")
            .optional("- {bowler: A-07, from: 3}", "none");
    public static final Key<Void> MEASURED = SCENARIO.key(
                    "measured",
                    Structure.FILES,
                    "CSV tables of what was measured at the event: tapes, balls thrown, scores, times of games")
            .optional("[tapes.csv, scores.csv]", "nothing");
    public static final Key<Void> PACE =
            SCENARIO.key("pace", Structure.BLOCK, "how long things take").optional("a block", "the usual pace");
    public static final Key<Void> BOWLERS = SCENARIO.key("bowlers", Structure.BLOCK, "what all bowlers have in common")
            .optional("a block", "bowlers as they are");
    public static final Key<Void> SCORING = SCENARIO.key("scoring", Structure.BLOCK, "how the event is scored")
            .optional("a block", "by the rules, without handicap");
    public static final Key<Void> CUT = SCENARIO.key(
                    "cut", Structure.BLOCK, "who goes on from qualifying, by the totals over all squads")
            .optional("{places: 16}", "nobody is left out");
    public static final Key<Void> INCIDENTS = SCENARIO.key(
                    "incidents", Structure.BLOCK, "what can go wrong with lanes, and what is done then")
            .optional("a block", "nothing");
    public static final Key<Void> LAWS =
            SCENARIO.key("laws", Structure.BLOCK, "laws of friction and oil").optional("a block", "the usual laws");
    public static final Key<Void> FAIRNESS = SCENARIO.key("fairness", Structure.BLOCK, "what counts as fair")
            .optional("{margin: 2 pins}", "the usual margin");
    public static final Key<Void> COSTS = SCENARIO.key("costs", Structure.BLOCK, "what oiling costs, and what it saves")
            .optional("a block", "assumed costs");
    public static final Key<Void> SURFACES = own("surfaces", "lane surfaces");
    public static final Key<Void> COVERS = own("covers", "ball covers");
    public static final Key<Void> STYLES = own("styles", "playing styles");
    public static final Key<Void> LEVELS = own("levels", "levels of skill");

    /** One squad. */
    public static final Block SQUAD = new Block("squads");

    public static final Key<String> SQUAD_ID =
            SQUAD.key("id", new Text(true), "name, alone in the event").required("A");
    public static final Key<Long> START =
            SQUAD.key("start", new Clock(), "start of practice").required("\"08:00\" or \"day 2 08:00\"");
    public static final Key<String> OIL = SQUAD.key(
                    "oil",
                    new Name("oil", String.join(", ", Names.OILINGS.keySet())),
                    "fresh (cleaned, then oiled), over (oiled over what is left), ends (cleaned past the pattern, not oiled)"
                            + " or none")
            .required("fresh");
    public static final Key<Integer> SQUAD_GAMES =
            SQUAD.key("games", Form.whole(1, MAX_GAMES), "of this squad").optional("3 to 8", "the event's");
    public static final Key<Long> SQUAD_PRACTICE =
            SQUAD.key("practice", PRACTICES, "of this squad").optional("5 min to 15 min", "the event's");
    public static final Key<Integer> SQUAD_BOWLERS = SQUAD.key(
                    "bowlers", Form.whole(1, BowlerKeys.MAX_BOWLERS), "of this squad, in place of perSquad")
            .optional("4 to 6 a pair", "perSquad");
    public static final Key<Integer> SQUAD_PLACES = SQUAD.key(
                    "places", Form.whole(1, BowlerKeys.MAX_BOWLERS), "most bowlers that a draw into squads puts in it")
            .optional("4 to 6 a pair", "10 a pair");
    public static final Key<Void> SQUAD_FIELD = SQUAD.key(
                    "field", Structure.NAME_OR_BLOCK, "this squad's own field, or the name of one of fields")
            .optional("open-play, or a block", "the event's");
    public static final Key<Void> BREAKS = SQUAD.key("breaks", Structure.LIST, "when its groups rest")
            .optional("- {after: 3, length: 15 min}", "none");
    public static final Key<Integer> SQUAD_MACHINES = SQUAD.key(
                    "machines", CentreKeys.FLEET, "lane machines used before it")
            .optional("1", "all of the centre's");
    public static final Key<List<String>> GROUP_NAMES = SQUAD.key(
                    "groups", new Each<>("list of names", new Text(true)), "names of its groups, in their order")
            .optional("[1, 2, 4]", "numbers from 1");
    public static final Key<Void> SQUAD_LANES = SQUAD.key(
                    "lanes", Structure.SOME_PAIRS, "its own lanes; others may bowl on the rest meanwhile")
            .optional("9 to 16", "all of the centre's");
    public static final Key<String> SQUAD_PATTERN = SQUAD.key(
                    "pattern", new Name("pattern", ""), "the name of what is laid on all its lanes before it")
            .optional("Sport", "the event's");
    public static final Key<Void> SQUAD_LANE_PATTERNS = SQUAD.key(
                    "lanePatterns", Structure.LIST, "lanes that are laid with another pattern before it")
            .optional("- {pattern: Sport, lanes: even pairs}", "the event's; with pattern none");
    public static final Key<Void> SQUAD_MOVES = SQUAD.key(
                    "rotation", Structure.NAME_OR_BLOCK, "how its groups move over its pairs")
            .optional("right", "the event's");
    public static final Key<Long> OIL_AT = SQUAD.key("oilAt", new Clock(), "when the machines begin on its lanes")
            .optional("\"06:30\"", "as late as they may");
    public static final Key<Long> OIL_REST = SQUAD.key(
                    "oilRest", Form.time("min", 12 * Sources.HOUR_MS), "how long its oil lies before practice at least")
            .usual("0 min to 30 min", 0L);

    /** A break. */
    public static final Block BREAK = new Block("squads.breaks");

    public static final Key<Integer> AFTER = BREAK.key(
                    "after", Form.whole(1, MAX_GAMES), "game after which a group rests")
            .optional("3", "at");
    public static final Key<Long> AT = BREAK.key("at", new Clock(), "a group rests after the game it plays then")
            .optional("\"12:00\"", "after");
    public static final Key<Long> LENGTH = BREAK.key(
                    "length", Form.time("min", Range.above(0, 12 * Sources.HOUR_MS)), "how long")
            .required("10 min to 60 min");

    /** Lanes with another pattern. */
    public static final Block LANE_PATTERN = new Block("lanePatterns");

    public static final Key<String> LAID = LANE_PATTERN
            .key("pattern", new Name("pattern", ""), "the name of the pattern")
            .required("Sport");
    public static final Key<Void> LAID_ON = LANE_PATTERN
            .key(
                    "lanes",
                    Structure.SOME_LANES,
                    "where it is laid: lanes and pairs, or odd pairs, even pairs (from the left), left lanes, right lanes")
            .required("[3-4, 8]");

    /** How groups move. */
    public static final Block ROTATION = new Block("rotation");

    public static final Key<String> DESIGN = ROTATION.key(
                    "design",
                    new Choice<>("rotation", RotationDesigns.all()),
                    "stay, right, left, turning, apart, balanced, part-balanced, drawn, searched or listed")
            .required("right");
    public static final Key<Integer> MOVE = ROTATION.key(
                    "move",
                    Form.count(Measure.PAIRS, "pairs", 1, 100),
                    "how far at each move (right, left, turning, apart)")
            .optional("1 pair or 2 pairs", "1 pair; turning 2 pairs");
    public static final Key<Integer> EVERY = ROTATION.key(
                    "every",
                    Form.count(Measure.GAMES, "games", 1, MAX_GAMES),
                    "games on a pair before the next move (right, left)")
            .assumed(1, Sources.TRADE);
    public static final Key<Void> TABLE = ROTATION.key(
                    "table", Structure.TABLE, "one row a game, in it each group's pair (listed)")
            .optional("[1-2, 3-4]", "none");
    public static final Key<Boolean> REPEATS = ROTATION.key(
                    "repeats", new Choice<>("rule for repeats", repeats()), "whether a group may come back to a pair")
            .usual("forbidden", true);

    private EventKeys() {}

    private static Key<Void> own(String name, String what) {
        return SCENARIO.key(name, Structure.BLOCK, what + " of your own, by name")
                .optional("a block", "the shipped ones alone");
    }

    private static Map<String, Boolean> repeats() {
        Map<String, Boolean> rules = new LinkedHashMap<>();
        rules.put("allowed", true);
        rules.put("forbidden", false);
        return Collections.unmodifiableMap(rules);
    }
}
