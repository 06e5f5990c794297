package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.notice.Nearest;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.LineUpChange.Absence;
import lanetide.squads.model.LineUpChange.LateArrival;
import lanetide.squads.model.LineUpChange.Substitution;

/** Reads who does not bowl as listed. */
final class ChangesReader {
    private final Notices notices;
    private final BowlerReader bowlers;
    private final List<SquadDraft> squads;
    private final Map<String, Integer> squadOf = new LinkedHashMap<>();
    private final List<List<LineUpChange>> changes = new ArrayList<>();
    private final Set<String> changed = new HashSet<>();

    /** Reads changes of some squads' groups; squads whose groups are not known have none. */
    ChangesReader(Notices notices, BowlerReader bowlers, List<SquadDraft> squads, List<Optional<List<Group>>> groups) {
        this.notices = notices;
        this.bowlers = bowlers;
        this.squads = squads;
        for (int squad = 0; squad < squads.size(); squad++) {
            changes.add(new ArrayList<>());
            for (Group group : groups.get(squad).orElse(List.of())) {
                for (Bowler bowler : group.bowlers()) {
                    squadOf.put(bowler.id(), squad);
                    bowlers.take(bowler.id());
                }
            }
        }
    }

    /** The changes of each squad, in the order of the squads. */
    List<List<LineUpChange>> read(Section scenario) {
        if (!squadOf.isEmpty()) {
            scenario.get("changes")
                    .flatMap(Value::list)
                    .ifPresent(list ->
                            list.forEach(item -> item.section(Block.CHANGE).ifPresent(this::change)));
            nobodyLeft(scenario);
        }
        return changes;
    }

    private void change(Section section) {
        Optional<Value> name = section.require("bowler");
        String bowler = name.flatMap(Value::text).orElse("");
        if (bowler.isEmpty()) {
            return;
        }
        if (!squadOf.containsKey(bowler)) {
            name.ifPresent(value -> unknown(value, bowler));
            return;
        }
        if (!changed.add(bowler)) {
            name.ifPresent(
                    value -> value.refuse(
                            NoticeCode.DUPLICATE_NAME,
                            ", whose place an earlier line changes already; a bowler must stand here once. Remove one of the two."));
            return;
        }
        int squad = squadOf.get(bowler);
        change(section, bowler, squads.get(squad)).ifPresent(changes.get(squad)::add);
    }

    private Optional<LineUpChange> change(Section section, String bowler, SquadDraft squad) {
        int before = notices.errors();
        if (section.has("arrives")) {
            refuseBeside(section, "from");
            refuseBeside(section, "substitute");
            OptionalLong arrivesMs =
                    section.get("arrives").map(Value::timeOfDay).orElse(OptionalLong.empty());
            return section.build(before, () -> new LateArrival(bowler, arrivesMs.orElseThrow()));
        }
        int from = section.get("from")
                .map(value -> value.whole(1, Math.max(1, squad.games())))
                .orElse(OptionalInt.of(1))
                .orElse(0);
        if (!section.has("substitute")) {
            return section.build(before, () -> new Absence(bowler, from));
        }
        Optional<Bowler> substitute =
                section.block("substitute", Block.SUBSTITUTE).flatMap(bowlers::read);
        return section.build(before, () -> new Substitution(bowler, from, substitute.orElseThrow()));
    }

    private static void refuseBeside(Section section, String key) {
        section.get(key)
                .ifPresent(
                        value -> value.say(
                                NoticeCode.CONFLICTING_KEYS,
                                value.plain(),
                                value.path() + (value.plain().isEmpty() ? "" : " is `" + value.plain() + "` and")
                                        + " stands beside"
                                        + " `arrives`; a bowler either comes late or is replaced or missing. Remove one of the two."));
    }

    private void unknown(Value name, String bowler) {
        String nearest = Nearest.to(bowler, squadOf.keySet())
                .map(near -> " Did you mean " + near + "?")
                .orElse("");
        name.refuse(
                NoticeCode.UNKNOWN_NAME,
                ", which is no bowler of the event." + nearest
                        + " Drawn bowlers are called by their squad and a number, such as A-07.");
    }

    /** A squad must have somebody to play its last game. */
    private void nobodyLeft(Section scenario) {
        for (int squad = 0; squad < squads.size(); squad++) {
            int number = squad;
            long bowlersOfSquad =
                    squadOf.values().stream().filter(other -> other == number).count();
            long absent = changes.get(squad).stream()
                    .filter(Absence.class::isInstance)
                    .count();
            if (absent > 0 && absent == bowlersOfSquad) {
                scenario.get("changes")
                        .ifPresent(list -> list.say(
                                NoticeCode.SQUAD_WITHOUT_BOWLERS,
                                squads.get(number).id(),
                                "The changes leave squad " + squads.get(number).id()
                                        + " without a bowler in its last game; it must have at least one. Take a line out, or name"
                                        + " a substitute."));
            }
        }
    }
}
