package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Conditioning;

/** Reads the list of squads, up to their bowlers. */
final class SquadsReader {
    /** Most games a squad bowls. */
    static final int MOST_GAMES = 100;

    private static final Range PRACTICE = Range.between(0, 2 * 3_600_000);
    private static final int MOST_SQUADS = 100;
    private static final String ONLY_CLEANED = "clean";

    private final Assumptions assumptions;
    private final Set<String> taken = new HashSet<>();

    SquadsReader(Assumptions assumptions) {
        this.assumptions = assumptions;
    }

    List<SquadDraft> read(Section scenario) {
        int games = scenario.whole("games", 1, MOST_GAMES);
        double practiceMs = scenario.quantity("practice", Measure.TIME, PRACTICE, Defaults.PRACTICE, assumptions);
        Optional<Value> list = scenario.require("squads");
        List<Value> items = list.flatMap(Value::list).orElse(List.of());
        List<SquadDraft> squads = new ArrayList<>();
        for (Value item : items) {
            item.section(Block.SQUAD).ifPresent(section -> squads.add(squad(section, games, practiceMs)));
        }
        list.ifPresent(value -> checkList(value, items, squads));
        return squads;
    }

    private SquadDraft squad(Section section, int games, double practiceMs) {
        Optional<Value> idValue = section.require("id");
        String id = idValue.flatMap(Value::id).orElse("");
        if (!id.isEmpty() && !taken.add(id)) {
            idValue.ifPresent(SquadsReader::twice);
        }
        Optional<Long> startMs = section.require("start").flatMap(SquadsReader::timeOfDay);
        Optional<Conditioning> oil = section.require("oil").flatMap(SquadsReader::oil);
        int ownGames = section.has("games") ? section.whole("games", 1, MOST_GAMES) : games;
        double ownPractice =
                section.has("practice") ? section.quantity("practice", Measure.TIME, PRACTICE) : practiceMs;
        OptionalInt bowlers = section.get("bowlers")
                .map(value -> value.whole(1, FieldReader.MOST_BOWLERS))
                .orElse(OptionalInt.empty());
        return new SquadDraft(section, id, startMs, oil, ownGames, ownPractice, bowlers);
    }

    private static Optional<Conditioning> oil(Value value) {
        if (value.plain().equals(ONLY_CLEANED)) {
            value.refuse(
                    NoticeCode.BARE_LANES,
                    ", but nobody can bowl on lanes that are cleaned and not oiled; they must be oiled before a squad. Write"
                            + " `fresh`, `over` or `none`.");
            return Optional.empty();
        }
        return value.oneOf(Names.OILINGS, "oil");
    }

    private static Optional<Long> timeOfDay(Value value) {
        var time = value.timeOfDay();
        return time.isPresent() ? Optional.of(time.getAsLong()) : Optional.empty();
    }

    private static void twice(Value id) {
        id.refuse(
                NoticeCode.DUPLICATE_NAME,
                ", the name of an earlier squad; each squad must have a name alone in the event. Choose another.");
    }

    private void checkList(Value list, List<Value> items, List<SquadDraft> squads) {
        if (items.isEmpty() && list.written().equals("a list")) {
            list.refuse(NoticeCode.EMPTY_VALUE, " without a squad; there must be at least one." + list.advice());
        }
        if (items.size() > MOST_SQUADS) {
            list.refuse(
                    NoticeCode.OUT_OF_RANGE,
                    " of " + items.size() + " squads; there must be at most " + MOST_SQUADS
                            + ". Split the event into several scenarios.");
        }
        if (!squads.isEmpty()
                && squads.get(0)
                        .conditioning()
                        .filter(Conditioning.NONE::equals)
                        .isPresent()) {
            squads.get(0).section().get("oil").ifPresent(SquadsReader::bareLanes);
        }
        checkOrder(squads);
    }

    private static void bareLanes(Value oil) {
        oil.refuse(
                NoticeCode.FIRST_SQUAD_WITHOUT_OIL,
                ", but the first squad must find oil on the lanes. Write `fresh` for it.");
    }

    private void checkOrder(List<SquadDraft> squads) {
        for (int i = 1; i < squads.size(); i++) {
            Optional<Long> start = squads.get(i).startMs();
            Optional<Long> before = squads.get(i - 1).startMs();
            if (start.isPresent() && before.isPresent() && start.get() < before.get()) {
                String previous = squads.get(i - 1).id();
                squads.get(i)
                        .section()
                        .get("start")
                        .ifPresent(value -> value.refuse(
                                NoticeCode.SQUADS_OUT_OF_ORDER,
                                ", before squad " + previous + " at " + TimeOfDay.write(before.get())
                                        + "; squads must be listed in order of start. Reorder them, or write \"day 2 08:00\" for the"
                                        + " next day."));
            }
        }
    }
}
