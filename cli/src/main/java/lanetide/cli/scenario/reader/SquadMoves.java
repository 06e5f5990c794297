package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.RotationDesign;

/** How the groups of each squad move: by its own `rotation`, else by the event's. */
final class SquadMoves {
    private final Notices notices;
    private final Section scenario;
    private final List<SquadDraft> drafts;
    private final Optional<RotationReader.Choice> ofEvent;
    private final List<Optional<RotationReader.Choice>> own = new ArrayList<>();

    /** Reads what the scenario and its squads say. */
    SquadMoves(Notices notices, Section scenario, List<SquadDraft> drafts, Lanes lanes, long seed) {
        this.notices = notices;
        this.scenario = scenario;
        this.drafts = drafts;
        boolean isNeeded = drafts.isEmpty()
                || scenario.has(EventKeys.MOVES)
                || drafts.stream().anyMatch(draft -> !hasOwn(draft));
        OptionalInt games = drafts.stream()
                .flatMap(draft -> draft.games().stream())
                .mapToInt(Integer::intValue)
                .max();
        this.ofEvent =
                isNeeded ? new RotationReader(lanes, "the centre", games, seed).read(scenario) : Optional.empty();
        for (SquadDraft draft : drafts) {
            OptionalInt played = draft.games().map(OptionalInt::of).orElse(OptionalInt.empty());
            own.add(
                    hasOwn(draft)
                            ? new RotationReader(draft.lanes(), "the squad", played, seed)
                                    .read(draft.section(), EventKeys.SQUAD_MOVES)
                            : ofEvent.filter(choice -> holds(choice, draft, lanes)));
        }
    }

    private static boolean hasOwn(SquadDraft draft) {
        return draft.section().has(EventKeys.SQUAD_MOVES);
    }

    /** A table names the pairs of all lanes. */
    private static boolean holds(RotationReader.Choice choice, SquadDraft draft, Lanes lanes) {
        boolean fits = !choice.isListed()
                || draft.lanes().rotationPairs().equals(lanes.rotationPairs())
                || draft.lanes().pairs().isEmpty();
        if (!fits) {
            draft.section()
                    .refuse(
                            EventKeys.SQUAD_LANES,
                            NoticeCode.CONFLICTING_KEYS,
                            ", but the event's `rotation` lists pairs of all lanes. Give squad " + draft.called()
                                    + " a `rotation` of its own.");
        }
        return fits;
    }

    /** How the groups of each squad move; empty if something is wrong. */
    Optional<List<RotationDesign>> designs() {
        return own.stream().allMatch(Optional::isPresent)
                ? Optional.of(own.stream()
                        .map(choice -> choice.orElseThrow().design())
                        .toList())
                : Optional.empty();
    }

    /** The rotations of squads in a centre, without those that have a notice. */
    List<Rotation> planned(List<Squad> squads, Centre centre) {
        List<Rotation> rotations = new ArrayList<>();
        RotationPlanner common = new RotationPlanner(notices, scenario, EventKeys.MOVES, ofEvent);
        for (int i = 0; i < squads.size(); i++) {
            SquadDraft draft = drafts.get(i);
            RotationPlanner planner = hasOwn(draft)
                    ? new RotationPlanner(notices, draft.section(), EventKeys.SQUAD_MOVES, own.get(i))
                    : common;
            Centre seen = draft.lanes().pairs().isEmpty() ? centre : centre.keeping(draft.own(centre));
            if (own.get(i).isPresent()) {
                planner.plan(squads.get(i), draft.games().orElseThrow(), seen).ifPresent(rotations::add);
            }
        }
        return rotations;
    }
}
