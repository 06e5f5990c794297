package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.entries.BowlerReader;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Nearest;
import lanetide.cli.scenario.notice.NoticeCode;
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
    private final BowlerReader bowlers;
    private final List<SquadDraft> squads;
    private final Map<String, Integer> squadOf = new LinkedHashMap<>();
    private final List<List<LineUpChange>> changes = new ArrayList<>();
    private final Set<String> changed = new HashSet<>();

    /** Reads changes of some squads' groups; squads whose groups are not known have none. */
    ChangesReader(BowlerReader bowlers, List<SquadDraft> squads, List<Optional<List<Group>>> groups) {
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
            scenario.blocks(EventKeys.CHANGES).forEach(this::change);
            nobodyLeft(scenario);
        }
        return changes;
    }

    private void change(Section section) {
        section.find(BowlerKeys.BOWLER)
                .ifPresent(bowler ->
                        change(section, bowler, section.value(BowlerKeys.BOWLER).orElseThrow()));
    }

    private void change(Section section, String bowler, Value name) {
        if (!squadOf.containsKey(bowler)) {
            unknown(name, bowler);
            return;
        }
        if (!changed.add(bowler)) {
            name.refuse(
                    NoticeCode.DUPLICATE_NAME,
                    ", whose place an earlier line changes already; a bowler must stand here once. Remove one of the two.");
            return;
        }
        int squad = squadOf.get(bowler);
        change(section, bowler, squads.get(squad)).ifPresent(changes.get(squad)::add);
    }

    private Optional<LineUpChange> change(Section section, String bowler, SquadDraft squad) {
        if (section.has(BowlerKeys.ARRIVES)) {
            refuseBeside(section, BowlerKeys.FROM);
            refuseBeside(section, BowlerKeys.REPLACED_BY);
            return section.build(() -> new LateArrival(bowler, section.get(BowlerKeys.ARRIVES)));
        }
        int from = section.within(
                        BowlerKeys.FROM, Range.between(1, squad.games().orElse(1)))
                .orElse(1);
        if (!section.has(BowlerKeys.REPLACED_BY)) {
            return section.build(() -> new Absence(bowler, from));
        }
        Optional<Bowler> substitute = section.block(BowlerKeys.REPLACED_BY).flatMap(bowlers::substitute);
        return section.build(() -> new Substitution(bowler, from, substitute.orElseThrow()));
    }

    private static void refuseBeside(Section section, Key<?> key) {
        section.value(key)
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
                ", which is not a bowler of the event." + nearest
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
                scenario.value(EventKeys.CHANGES)
                        .ifPresent(list -> list.say(
                                NoticeCode.SQUAD_WITHOUT_BOWLERS,
                                squads.get(number).called(),
                                "The changes leave squad " + squads.get(number).called()
                                        + " without a bowler in its last game; it must have at least one. Take a line out, or name"
                                        + " a substitute."));
            }
        }
    }
}
