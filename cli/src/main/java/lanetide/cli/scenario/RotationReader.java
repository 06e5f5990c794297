package lanetide.cli.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LanePair;
import lanetide.squads.rotation.Counter;
import lanetide.squads.rotation.Explicit;
import lanetide.squads.rotation.Ring;
import lanetide.squads.rotation.RotationDesign;
import lanetide.squads.rotation.RowComplete;
import lanetide.squads.rotation.Stay;

/** Reads how groups move over the pairs. */
final class RotationReader {
    private static final int MOST_PAIRS = 100;
    private static final int MOST_GAMES = 100;
    private static final List<String> MOVING = List.of("right", "left", "apart");

    private final Notices notices;
    private final Optional<Centre> centre;
    private final Assumptions assumptions;

    RotationReader(Notices notices, Optional<Centre> centre, Assumptions assumptions) {
        this.notices = notices;
        this.centre = centre;
        this.assumptions = assumptions;
    }

    Optional<RotationDesign> read(Section scenario) {
        Optional<Value> written = scenario.get("rotation");
        if (written.isEmpty()) {
            assumptions.add("rotation", Defaults.ROTATION, "common practice, no source");
            return Optional.of(new Stay());
        }
        Value value = written.get();
        return value.isBlock() ? value.section(Block.ROTATION).flatMap(this::block) : plain(value);
    }

    /** A design by its name alone. */
    private Optional<RotationDesign> plain(Value value) {
        Optional<String> name = value.oneOf(designs(), "rotation");
        if (name.filter("listed"::equals).isPresent()) {
            value.refuse(
                    NoticeCode.MISSING_KEY,
                    ", which needs a table. Write a block with `design: listed` and `table:`, one row a game.");
            return Optional.empty();
        }
        return name.map(design -> design(design, step(value, design), every(value, design)));
    }

    private int step(Value value, String design) {
        if (MOVING.contains(design)) {
            assumptions.add(value.path() + ".move", Defaults.MOVE);
        }
        return (int) Defaults.MOVE.base();
    }

    private int every(Value value, String design) {
        if (MOVING.indexOf(design) < 2 && MOVING.contains(design)) {
            assumptions.add(value.path() + ".every", Defaults.EVERY);
        }
        return (int) Defaults.EVERY.base();
    }

    private Optional<RotationDesign> block(Section section) {
        int before = notices.errors();
        Optional<Value> value = section.require("design");
        Optional<String> design = value.flatMap(name -> name.oneOf(designs(), "rotation"));
        if (design.isEmpty()) {
            return Optional.empty();
        }
        String name = design.get();
        boolean moves = MOVING.contains(name);
        boolean waits = moves && !name.equals("apart");
        int step = read(section, "move", moves, name, Measure.PAIRS, MOST_PAIRS, Defaults.MOVE);
        int every = read(section, "every", waits, name, Measure.GAMES, MOST_GAMES, Defaults.EVERY);
        List<List<Integer>> table = table(section, name);
        Supplier<RotationDesign> build = () -> name.equals("listed") ? new Explicit(table) : design(name, step, every);
        return notices.build(before, section.place(), section.path(), build);
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

    private static RotationDesign design(String name, int step, int every) {
        return switch (name) {
            case "stay" -> new Stay();
            case "right" -> new Ring(step, every);
            case "left" -> new Ring(-step, every);
            case "apart" -> new Counter(step);
            case "balanced" -> new RowComplete();
            default -> throw new IllegalStateException("no design " + name);
        };
    }

    private List<List<Integer>> table(Section section, String design) {
        if (!design.equals("listed")) {
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
            PairsReader.pair(item).ifPresent(pair -> position(pair, item).ifPresent(positions::add));
        }
        return positions;
    }

    private Optional<Integer> position(LanePair pair, Value item) {
        if (centre.isEmpty()) {
            return Optional.empty();
        }
        List<LanePair> pairs = centre.get().pairs();
        if (!pairs.contains(pair)) {
            item.refuse(
                    NoticeCode.UNKNOWN_PAIR,
                    ", which is no pair of the centre. Its pairs are "
                            + pairs.stream().map(LanePair::id).collect(Collectors.joining(", ")) + ".");
            return Optional.empty();
        }
        return Optional.of(pairs.indexOf(pair));
    }

    private static Map<String, String> designs() {
        Map<String, String> names = new LinkedHashMap<>();
        for (String name : List.of("stay", "right", "left", "apart", "balanced", "listed")) {
            names.put(name, name);
        }
        return names;
    }
}
