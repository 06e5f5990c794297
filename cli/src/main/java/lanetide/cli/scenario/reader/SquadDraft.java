package lanetide.cli.scenario.reader;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Group;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;

/**
 * A squad as its block in the file states it, before its bowlers are known.
 *
 * @param section the block
 * @param id its name; empty if it is wrong
 * @param startMs planned start of practice (ms); empty if it is wrong
 * @param conditioning what is done to the lanes; empty if it is wrong
 * @param games its games; empty if they are wrong
 * @param practiceMs its practice (ms); empty if it is wrong
 * @param lanes the lanes that it has; none if they are wrong
 */
record SquadDraft(
        Section section,
        Optional<String> id,
        Optional<Long> startMs,
        Optional<Conditioning> conditioning,
        Optional<Integer> games,
        Optional<Long> practiceMs,
        Lanes lanes) {
    /** Pairs to which its groups are sent. */
    int pairs() {
        return lanes.rotationPairs().size();
    }

    /** Pairs that it has to itself; none if it has all of the centre's. */
    List<LanePair> own(Centre centre) {
        return lanes.pairs().equals(centre.pairs()) ? List.of() : lanes.pairs();
    }

    /**
     * The last squad before one that needs a lane of it; where lanes are wrong, the one before.
     *
     * @param squads all squads
     * @param at the place of the squad
     */
    static Optional<SquadDraft> lastBefore(List<SquadDraft> squads, int at) {
        SquadDraft squad = squads.get(at);
        for (int before = at - 1; before >= 0; before--) {
            if (squad.lanes.pairs().isEmpty() || squad.sharesLanes(squads.get(before))) {
                return Optional.of(squads.get(before));
            }
        }
        return Optional.empty();
    }

    /** Whether it needs a lane that another one needs too. */
    boolean sharesLanes(SquadDraft other) {
        return !Collections.disjoint(lanes.pairs(), other.lanes.pairs());
    }

    /** Its name as messages tell it: nothing where it is wrong, which a notice of its own says. */
    String called() {
        return id.orElse("");
    }

    boolean hasOwnField() {
        return section.has(EventKeys.SQUAD_FIELD);
    }

    /** The name of its field, if it is one of those that the scenario names. */
    Optional<String> fieldName() {
        return section.value(EventKeys.SQUAD_FIELD).filter(Value::isScalar).map(Value::plain);
    }

    /** The squad with its bowlers and what is arranged; empty if something of it is wrong. */
    Optional<Squad> with(List<Group> groups, Arrangements arrangements) {
        return id.isEmpty() || startMs.isEmpty() || conditioning.isEmpty() || games.isEmpty() || practiceMs.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Squad(id.get(), startMs.get(), conditioning.get(), practiceMs.get(), groups, arrangements));
    }
}
