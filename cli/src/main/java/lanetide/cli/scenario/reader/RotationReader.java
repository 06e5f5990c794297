package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.lanes.PairList;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.LanePair;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.Stay;

/**
 * Reads how groups move over the pairs.
 *
 * @param lanes which pairs of the centre groups are sent to
 * @param whose whose pairs these are, in words
 * @param games most games of a squad; empty if they are not known
 * @param seed seed of what is drawn or searched
 */
record RotationReader(Lanes lanes, String whose, OptionalInt games, long seed) {
    private static final String TRADE = "common practice, no source";

    /** A design, and whether a group may come back to a pair. */
    record Choice(RotationDesign design, boolean mayRepeat) {
        /** Whether it names pairs, so that it holds for one row of them. */
        boolean isListed() {
            return design instanceof Explicit;
        }
    }

    /** How the groups of all squads move. */
    Optional<Choice> read(Section scenario) {
        if (!scenario.has(EventKeys.MOVES)) {
            scenario.assume(EventKeys.MOVES, EventKeys.MOVES.otherwise(), TRADE);
            return Optional.of(new Choice(new Stay(), true));
        }
        return read(scenario, EventKeys.MOVES);
    }

    /** How groups move by a key that is there. */
    Optional<Choice> read(Section section, Key<Void> key) {
        Value value = section.value(key).orElseThrow();
        return value.isBlock()
                ? section.block(key).flatMap(this::block)
                : plain(section, key, value).map(design -> new Choice(design, true));
    }

    /** A design by its name alone. */
    private Optional<RotationDesign> plain(Section scenario, Key<Void> key, Value value) {
        Optional<String> name = value.read(EventKeys.DESIGN.form());
        if (name.filter(RotationDesigns.LISTED::equals).isPresent()) {
            value.refuse(
                    NoticeCode.MISSING_KEY,
                    ", which needs a table. Write a block with `design: listed` and `table:`, one row a game.");
            return Optional.empty();
        }
        return name.flatMap(design -> scenario.usualBlock(key)
                .flatMap(section -> section.build(
                        () -> RotationDesigns.of(design, move(section, design), every(section, design), seed))));
    }

    private Optional<Choice> block(Section section) {
        Optional<String> design = section.find(EventKeys.DESIGN);
        if (design.isEmpty()) {
            return Optional.empty();
        }
        String name = design.get();
        refuseUnless(RotationDesigns.moves(name), section, EventKeys.MOVE, name);
        refuseUnless(RotationDesigns.waits(name), section, EventKeys.EVERY, name);
        refuseUnless(name.equals(RotationDesigns.LISTED), section, EventKeys.TABLE, name);
        if (RotationDesigns.waits(name)) {
            warnIfNeverMoves(section, games);
        }
        if (name.equals("turning") && section.find(EventKeys.MOVE).orElse(2) % 2 != 0) {
            section.value(EventKeys.MOVE).ifPresent(RotationReader::odd);
        }
        List<List<Integer>> table = name.equals(RotationDesigns.LISTED) ? table(section) : List.of();
        return section.build(() -> new Choice(
                name.equals(RotationDesigns.LISTED)
                        ? new Explicit(table)
                        : RotationDesigns.of(name, move(section, name), every(section, name), seed),
                section.get(EventKeys.REPEATS)));
    }

    private static int move(Section section, String design) {
        int usual = RotationDesigns.usualMove(design);
        if (RotationDesigns.moves(design) && !section.has(EventKeys.MOVE)) {
            section.assume(EventKeys.MOVE, EventKeys.MOVE.form().write(usual), TRADE);
        }
        return section.find(EventKeys.MOVE).orElse(usual);
    }

    private static int every(Section section, String design) {
        return RotationDesigns.waits(design) ? section.get(EventKeys.EVERY) : 1;
    }

    private static void warnIfNeverMoves(Section section, OptionalInt games) {
        section.value(EventKeys.EVERY)
                .filter(every -> games.isPresent())
                .filter(every -> section.find(EventKeys.EVERY).orElse(1) >= games.getAsInt())
                .ifPresent(every -> every.refuse(
                        NoticeCode.VALUE_WITHOUT_EFFECT,
                        ", so that nobody moves in " + games.getAsInt()
                                + (games.getAsInt() == 1 ? " game" : " games")
                                + ". Write fewer, or `rotation: stay`."));
    }

    private static void odd(Value move) {
        move.refuse(
                NoticeCode.OUT_OF_RANGE,
                "; groups that turn back at the end must move an even number of pairs, or two would meet on the way back."
                        + " Try 2 pairs.");
    }

    private static void refuseUnless(boolean applies, Section section, Key<?> key, String design) {
        if (!applies) {
            section.refuse(
                    key,
                    NoticeCode.CONFLICTING_KEYS,
                    ", but `" + key.name() + "` means nothing in the design " + design
                            + ". Leave it out or choose another design.");
        }
    }

    private List<List<Integer>> table(Section section) {
        section.require(EventKeys.TABLE);
        return section.list(EventKeys.TABLE).stream().map(this::row).toList();
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
        String pairs = Lanes.named(lanes.rotationPairs());
        lanes.whyNot(pair)
                .ifPresentOrElse(
                        why -> item.refuse(
                                NoticeCode.PAIR_NOT_IN_USE,
                                ", but that pair is " + why
                                        + "; a group must be sent to a pair in use. Send it to one of " + pairs
                                        + ", or take " + pair.id() + " out of `" + why + "`."),
                        () -> item.refuse(
                                NoticeCode.UNKNOWN_PAIR,
                                ", which is not a pair of " + whose + ". Its pairs are " + pairs + "."));
        return Optional.empty();
    }
}
