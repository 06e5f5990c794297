package lanetide.cli.scenario.reader;

import java.util.Optional;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.RuleKeys;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.Laws;

/** Reads which laws a scenario is played under. */
final class LawsReader {
    private LawsReader() {}

    static Optional<Laws> read(Section scenario) {
        return scenario.blockOrUsual(EventKeys.LAWS)
                .flatMap(section ->
                        section.build(() -> new Laws(section.get(RuleKeys.FRICTION), section.get(RuleKeys.SPLIT))));
    }
}
