package lanetide.cli.scenario.reader;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.lanes.OwnLanes;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.LanePair;

/** Reads the list of squads, up to their bowlers. */
final class SquadsReader {
    private static final int MAX_SQUADS = 100;
    private static final String ONLY_CLEANED = "clean";

    private final Set<String> taken = new HashSet<>();

    /** The squads on some lanes. */
    List<SquadDraft> read(Section scenario, Lanes lanes) {
        Optional<Integer> games = scenario.find(EventKeys.GAMES);
        Optional<Long> practiceMs = scenario.find(EventKeys.PRACTICE);
        List<Value> items = scenario.list(EventKeys.SQUADS);
        List<SquadDraft> squads = items.stream()
                .flatMap(item -> item.section(EventKeys.SQUAD).stream())
                .map(section -> squad(section, games, practiceMs, lanes))
                .toList();
        scenario.value(EventKeys.SQUADS).ifPresent(value -> checkList(value, items.size(), squads));
        return squads;
    }

    private SquadDraft squad(Section section, Optional<Integer> games, Optional<Long> practiceMs, Lanes lanes) {
        Optional<String> id = section.find(EventKeys.SQUAD_ID);
        if (id.isPresent() && !taken.add(id.get())) {
            section.value(EventKeys.SQUAD_ID).ifPresent(SquadsReader::twice);
        }
        return new SquadDraft(
                section,
                id,
                section.find(EventKeys.START),
                section.value(EventKeys.OIL).flatMap(value -> oil(section, value)),
                section.has(EventKeys.SQUAD_GAMES) ? section.find(EventKeys.SQUAD_GAMES) : games,
                section.has(EventKeys.SQUAD_PRACTICE) ? section.find(EventKeys.SQUAD_PRACTICE) : practiceMs,
                OwnLanes.read(section, lanes));
    }

    private static Optional<Conditioning> oil(Section section, Value value) {
        if (value.plain().equals(ONLY_CLEANED)) {
            value.refuse(
                    NoticeCode.BARE_LANES,
                    ", but nobody can bowl on lanes that are cleaned and not oiled; they must be oiled before a squad. Write"
                            + " `fresh`, `over` or `none`.");
            return Optional.empty();
        }
        return section.oneOf(EventKeys.OIL, Names.OILINGS);
    }

    private static void twice(Value id) {
        id.refuse(
                NoticeCode.DUPLICATE_NAME,
                ", the name of an earlier squad; each squad must have a name alone in the event. Choose another.");
    }

    private static void checkList(Value list, int items, List<SquadDraft> squads) {
        if (items == 0 && list.written().equals("a list")) {
            list.refuse(NoticeCode.EMPTY_VALUE, " without a squad; there must be at least one." + list.advice());
        }
        if (items > MAX_SQUADS) {
            list.refuse(
                    NoticeCode.OUT_OF_RANGE,
                    " of " + items + " squads; there must be at most " + MAX_SQUADS
                            + ". Split the event into several scenarios.");
        }
        checkOil(squads);
        checkOrder(squads);
    }

    private static void checkOil(List<SquadDraft> squads) {
        Set<LanePair> oiled = new HashSet<>();
        for (int i = 0; i < squads.size(); i++) {
            SquadDraft squad = squads.get(i);
            Optional<Value> none = squad.conditioning()
                    .filter(how -> !how.laysOil())
                    .flatMap(how -> squad.section().value(EventKeys.OIL));
            List<LanePair> bare = squad.lanes().pairs().stream()
                    .filter(pair -> !oiled.contains(pair))
                    .toList();
            if (i == 0) {
                none.ifPresent(SquadsReader::bareLanes);
            } else if (!bare.isEmpty()) {
                none.ifPresent(oil -> oil.refuse(
                        NoticeCode.BARE_LANES,
                        ", but no squad before it has the pair " + bare.get(0).id()
                                + ", which would be bare; a squad must find oil on its lanes. Write `fresh`."));
            }
            oiled.addAll(squad.lanes().pairs());
        }
    }

    private static void bareLanes(Value oil) {
        oil.refuse(
                NoticeCode.FIRST_SQUAD_WITHOUT_OIL,
                ", but the first squad must find oil on the lanes. Write `fresh` for it.");
    }

    private static void checkOrder(List<SquadDraft> squads) {
        for (int i = 1; i < squads.size(); i++) {
            SquadDraft squad = squads.get(i);
            Optional<SquadDraft> last = SquadDraft.lastBefore(squads, i);
            Optional<Long> start = squad.startMs();
            Optional<Long> before = last.flatMap(SquadDraft::startMs);
            if (start.isPresent() && before.isPresent() && start.get() < before.get()) {
                String previous = last.orElseThrow().called();
                squad.section()
                        .refuse(
                                EventKeys.START,
                                NoticeCode.SQUADS_OUT_OF_ORDER,
                                ", before squad " + previous + " at " + TimeOfDay.write(before.get())
                                        + "; squads must be listed in order of start. Reorder them, or write \"day 2 08:00\" for the"
                                        + " next day.");
            }
        }
    }
}
