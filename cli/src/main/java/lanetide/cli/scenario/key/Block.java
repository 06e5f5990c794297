package lanetide.cli.scenario.key;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The blocks of a scenario and their keys: the reader knows no others, and the documents are checked against these. */
@SuppressWarnings("ImmutableEnumChecker") // the lists come from List.of
public enum Block {
    /** The whole file. */
    SCENARIO("", EventKeys.SCENARIO),
    /** The lanes. */
    CENTRE("centre", LaneKeys.CENTRE),
    /** How far the lanes are from level. */
    TOPOGRAPHY("centre.topography", LaneKeys.TOPOGRAPHY),
    /** One reading of a lane's shape. */
    SHAPE("centre.topography.readings", LaneKeys.SHAPE),
    /** The oil pattern. */
    PATTERN("pattern", PatternKeys.PATTERN),
    /** The left half of a pattern. */
    LEFT("pattern.left", PatternKeys.LEFT),
    /** A pattern by tape readings. */
    TAPES("pattern.tapes", PatternKeys.TAPES),
    /** The readings at one distance. */
    TAPE("pattern.tapes.readings", PatternKeys.TAPE),
    /** Limits of bands and tiers. */
    BANDS("pattern.bands", PatternKeys.BANDS),
    /** How groups move. */
    ROTATION("rotation", EventKeys.ROTATION),
    /** One squad. */
    SQUAD("squads", EventKeys.SQUAD),
    /** A break. */
    BREAK("squads.breaks", EventKeys.BREAK),
    /** Bowlers by shares. */
    FIELD("field", BowlerKeys.FIELD),
    /** One bowler. */
    ENTRY("entries", BowlerKeys.ENTRY),
    /** A change of who bowls. */
    CHANGE("changes", BowlerKeys.CHANGE),
    /** A substitute. */
    SUBSTITUTE("changes.substitute", BowlerKeys.SUBSTITUTE),
    /** What can go wrong with lanes. */
    INCIDENTS("incidents", LaneKeys.INCIDENTS),
    /** Short stops. */
    JAMS("incidents.jams", LaneKeys.JAMS),
    /** Faults. */
    FAULTS("incidents.faults", LaneKeys.FAULTS),
    /** A fault at a given time. */
    PLANNED("incidents.planned", LaneKeys.PLANNED),
    /** How long things take. */
    PACE("pace", EventKeys.PACE),
    /** What all bowlers have in common. */
    BOWLERS("bowlers", BowlerKeys.BOWLERS),
    /** How the event is scored. */
    SCORING("scoring", RuleKeys.SCORING),
    /** Handicap. */
    HANDICAP("scoring.handicap", RuleKeys.HANDICAP),
    /** The laws. */
    LAWS("laws", RuleKeys.LAWS),
    /** What counts as fair. */
    FAIRNESS("fairness", RuleKeys.FAIRNESS),
    /** What oiling costs, and what it saves, in a currency of the user's. */
    COSTS("costs", RuleKeys.COSTS),
    /** A lane surface. */
    SURFACE("surfaces.NAME", OwnKeys.SURFACE),
    /** A ball cover. */
    COVER("covers.NAME", OwnKeys.COVER),
    /** A playing style. */
    STYLE("styles.NAME", OwnKeys.STYLE),
    /** A level of skill. */
    LEVEL("levels.NAME", OwnKeys.LEVEL);

    private final String path;
    private final List<Key> keys;

    Block(String path, List<Key> keys) {
        this.path = path;
        this.keys = keys;
    }

    /**
     * Where the block stands.
     *
     * @return its path in the file, empty for the file itself
     */
    public String path() {
        return path;
    }

    /**
     * The keys the reader knows in this block.
     *
     * @return in the order a file usually has them
     */
    public List<Key> keys() {
        return keys;
    }

    /**
     * Describes a key.
     *
     * @param name the key's name
     * @return the key, empty if this block has none of that name
     */
    public Optional<Key> key(String name) {
        return keys.stream().filter(key -> key.name().equals(name)).findFirst();
    }

    public List<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    /** The block in which a key stands that was written in another one. */
    public static Optional<Block> homeOf(String key) {
        return Arrays.stream(values())
                .filter(block -> block.key(key).isPresent())
                .findFirst();
    }
}
