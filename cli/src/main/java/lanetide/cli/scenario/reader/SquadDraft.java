package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Group;
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
 */
record SquadDraft(
        Section section,
        Optional<String> id,
        Optional<Long> startMs,
        Optional<Conditioning> conditioning,
        Optional<Integer> games,
        Optional<Long> practiceMs) {
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
