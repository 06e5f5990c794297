package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Default;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.LanePair;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.Stay;

/** Reads how groups move over the pairs. */
final class RotationReader {
    private static final int MOST_PAIRS = 100;
    private static final int MOST_GAMES = 100;
    private static final Map<String, Boolean> REPEATS = repeats();

    private final Notices notices;
    private final Lanes lanes;
    private final Assumptions assumptions;
    private final long seed;

    /**
     * A reader.
     *
     * @param lanes which pairs of the centre groups are sent to
     * @param seed seed of what is drawn or searched
     */
    RotationReader(Notices notices, Lanes lanes, Assumptions assumptions, long seed) {
        this.notices = notices;
        this.lanes = lanes;
        this.assumptions = assumptions;
        this.seed = seed;
    }

    /** A design, and whether a group may come back to a pair. */
    record Choice(RotationDesign design, boolean mayRepeat) {}

    Optional<Choice> read(Section scenario) {
        Optional<Value> written = scenario.get("rotation");
        if (written.isEmpty()) {
            assumptions.add("rotation", Defaults.ROTATION, "common practice, no source");
            return Optional.of(new Choice(new Stay(), true));
        }
        Value value = written.get();
        return value.isBlock()
                ? value.section(Block.ROTATION).flatMap(this::block)
                : plain(value).map(design -> new Choice(design, true));
    }

    /** A design by its name alone. */
    private Optional<RotationDesign> plain(Value value) {
        Optional<String> name = value.oneOf(RotationDesigns.all(), "rotation");
        if (name.filter(RotationDesigns.LISTED::equals).isPresent()) {
            value.refuse(
                    NoticeCode.MISSING_KEY,
                    ", which needs a table. Write a block with `design: listed` and `table:`, one row a game.");
            return Optional.empty();
        }
        return name.map(design -> RotationDesigns.of(design, step(value, design), every(value, design), seed));
    }

    private int step(Value value, String design) {
        if (RotationDesigns.moves(design)) {
            assumptions.add(value.path() + ".move", usualMove(design));
        }
        return RotationDesigns.usualMove(design);
    }

    private int every(Value value, String design) {
        if (RotationDesigns.waits(design)) {
            assumptions.add(value.path() + ".every", Defaults.EVERY);
        }
        return (int) Defaults.EVERY.base();
    }

    private static Default usualMove(String design) {
        return design.equals("turning") ? Defaults.TURNING_MOVE : Defaults.MOVE;
    }

    private Optional<Choice> block(Section section) {
        int before = notices.errors();
        Optional<Value> value = section.require("design");
        Optional<String> design = value.flatMap(name -> name.oneOf(RotationDesigns.all(), "rotation"));
        if (design.isEmpty()) {
            return Optional.empty();
        }
        String name = design.get();
        int step = read(section, "move", RotationDesigns.moves(name), name, Measure.PAIRS, MOST_PAIRS, usualMove(name));
        int every =
                read(section, "every", RotationDesigns.waits(name), name, Measure.GAMES, MOST_GAMES, Defaults.EVERY);
        if (name.equals("turning") && step % 2 != 0) {
            section.get("move").ifPresent(RotationReader::odd);
        }
        List<List<Integer>> table = table(section, name);
        boolean mayRepeat = section.get("repeats")
                .flatMap(repeats -> repeats.oneOf(REPEATS, "rule for repeats"))
                .orElse(true);
        Supplier<Choice> build = () -> new Choice(
                name.equals(RotationDesigns.LISTED) ? new Explicit(table) : RotationDesigns.of(name, step, every, seed),
                mayRepeat);
        return section.build(before, build);
    }

    private static void odd(Value move) {
        move.refuse(
                NoticeCode.OUT_OF_RANGE,
                "; groups that turn back at the end must move an even number of pairs, or two would meet on the way back."
                        + " Try 2 pairs.");
    }

    private int read(
            Section section, String key, boolean applies, String design, Measure measure, int most, Default otherwise) {
        if (!applies) {
            section.get(key).ifPresent(value -> doesNotApply(value, key, design));
            return 0;
        }
        if (!section.has(key)) {
            assumptions.add(section.pathOf(key), otherwise);
            return (int) otherwise.base();
        }
        OptionalInt number = section.get(key).orElseThrow().whole(measure, 1, most);
        return number.orElse(0);
    }

    private static void doesNotApply(Value value, String key, String design) {
        value.refuse(
                NoticeCode.CONFLICTING_KEYS,
                ", but `" + key + "` means nothing in the design " + design
                        + ". Leave it out or choose another design.");
    }

    private List<List<Integer>> table(Section section, String design) {
        if (!design.equals(RotationDesigns.LISTED)) {
            section.get("table").ifPresent(value -> doesNotApply(value, "table", design));
            return List.of();
        }
        List<List<Integer>> rows = new ArrayList<>();
        for (Value row : section.require("table").flatMap(Value::list).orElse(List.of())) {
            rows.add(row(row));
        }
        return rows;
    }

    private List<Integer> row(Value row) {
        List<Integer> positions = new ArrayList<>();
        for (Value item : row.list().orElse(List.of())) {
            PairList.pair(item).ifPresent(pair -> position(pair, item).ifPresent(positions::add));
        }
        return positions;
    }

    private Optional<Integer> position(LanePair pair, Value item) {
        if (lanes.rotationPairs().isEmpty()) {
            return Optional.empty();
        }
        if (lanes.rotationPairs().contains(pair)) {
            return Optional.of(lanes.rotationPairs().indexOf(pair));
        }
        String pairs = lanes.rotationPairs().stream().map(LanePair::id).collect(Collectors.joining(", "));
        lanes.whyNot(pair)
                .ifPresentOrElse(
                        why -> item.refuse(
                                NoticeCode.PAIR_NOT_IN_USE,
                                ", but that pair is " + why
                                        + "; a group must be sent to a pair in use. Send it to one of " + pairs
                                        + ", or take " + pair.id() + " out of `" + why + "`."),
                        () -> item.refuse(
                                NoticeCode.UNKNOWN_PAIR,
                                ", which is no pair of the centre. Its pairs are " + pairs + "."));
        return Optional.empty();
    }

    private static Map<String, Boolean> repeats() {
        Map<String, Boolean> rules = new LinkedHashMap<>();
        rules.put("allowed", true);
        rules.put("forbidden", false);
        return Collections.unmodifiableMap(rules);
    }
}
