package lanetide.cli.scenario.reader;

import java.util.Optional;
import java.util.OptionalInt;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.Conditioning;

/**
 * A squad as its block in the file states it, before its bowlers are known.
 *
 * @param section the block
 * @param id its name; blank if it is wrong
 * @param startMs planned start of practice (ms); empty if it is wrong
 * @param conditioning what is done to the lanes; empty if it is wrong
 * @param games its games, 0 if they are wrong
 * @param practiceMs its practice (ms), NaN if it is wrong
 * @param bowlers its own number of bowlers, if it gives one
 */
record SquadDraft(
        Section section,
        String id,
        Optional<Long> startMs,
        Optional<Conditioning> conditioning,
        int games,
        double practiceMs,
        OptionalInt bowlers) {
    boolean hasOwnField() {
        return section.has("field");
    }
}
