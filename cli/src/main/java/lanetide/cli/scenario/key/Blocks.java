package lanetide.cli.scenario.key;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All blocks of a scenario, in the order in which they are told. */
public final class Blocks {
    private static final String NAMED = ".NAME";
    /** Blocks that also stand elsewhere, each by its name, under a key that is called otherwise. */
    private static final Map<String, String> BY_NAME = Map.of("fields", "field");

    /** Every block; the documents are checked against these. */
    public static final List<Block> ALL = List.of(
            EventKeys.SCENARIO,
            CentreKeys.CENTRE,
            CentreKeys.TOPOGRAPHY,
            CentreKeys.SHAPE,
            PatternKeys.PATTERN,
            PatternKeys.LEFT,
            PatternKeys.TAPES,
            PatternKeys.TAPE,
            PatternKeys.BANDS,
            PatternKeys.FURTHER,
            EventKeys.LANE_PATTERN,
            EventKeys.ROTATION,
            EventKeys.SQUAD,
            EventKeys.BREAK,
            BowlerKeys.FIELD,
            BowlerKeys.ENTRY,
            EntryListKeys.TABLE,
            EntryListKeys.COLUMN,
            DrawKeys.DRAW,
            BowlerKeys.CHANGE,
            BowlerKeys.SUBSTITUTE,
            IncidentKeys.INCIDENTS,
            IncidentKeys.JAMS.block(),
            IncidentKeys.FAULTS.block(),
            IncidentKeys.PLANNED,
            PaceKeys.PACE,
            BowlerKeys.BOWLERS,
            RuleKeys.SCORING,
            RuleKeys.HANDICAP,
            CutKeys.CUT,
            CutKeys.OF_FINALS,
            RuleKeys.LAWS,
            RuleKeys.FAIRNESS,
            RuleKeys.COSTS,
            OwnKeys.SURFACE,
            OwnKeys.COVER,
            OwnKeys.STYLE,
            OwnKeys.LINE,
            OwnKeys.LEVEL);

    private Blocks() {}

    /**
     * The block under a key.
     *
     * @param block the block in which the key stands
     * @param key a key of it
     * @return what stands there, or under each name there; empty if it is no block
     */
    public static Optional<Block> under(Block block, Key<?> key) {
        String path = block.path(key);
        return at(path).or(() -> at(path + NAMED))
                .or(() -> at(BY_NAME.getOrDefault(key.name(), key.name())))
                .or(() -> underFirst(key));
    }

    /** The block under a key that several blocks share, where it was declared first. */
    private static Optional<Block> underFirst(Key<?> key) {
        return ALL.stream()
                .filter(block -> block.keys().contains(key))
                .findFirst()
                .flatMap(first -> at(first.path(key)));
    }

    /**
     * The block that may stand under a key in place of a list.
     *
     * @param block the block in which the key stands
     * @param key a key of it
     * @return the block; empty if a list alone may stand there
     */
    public static Optional<Block> inPlaceOfList(Block block, Key<?> key) {
        String path = block.path(key);
        return ALL.stream()
                .filter(each -> each.path().equals(path) && !each.name().equals(path))
                .findFirst();
    }

    /**
     * Whether the block under a key is one of many, each by its name.
     *
     * @param block the block in which the key stands
     * @param key a key of it
     * @return true if any name may stand above the keys of the block under it
     */
    public static boolean isNamed(Block block, Key<?> key) {
        return at(block.path(key) + NAMED).isPresent() || BY_NAME.containsKey(block.path(key));
    }

    /**
     * The block in which a key stands that was written in another one.
     *
     * @param key a key's name
     * @return the first block that has it
     */
    public static Optional<Block> homeOf(String key) {
        return ALL.stream().filter(block -> block.key(key).isPresent()).findFirst();
    }

    private static Optional<Block> at(String path) {
        return ALL.stream().filter(block -> block.path().equals(path)).findFirst();
    }
}
