package lanetide.cli.scenario.reader;

import java.util.Optional;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.RuleKeys;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Knowledge;
import lanetide.squads.model.Scoring;

/** Reads what all bowlers of an event have in common, and how they are scored. */
final class BowlingReader {
    private BowlingReader() {}

    static Optional<Bowling> read(Section scenario) {
        Optional<Scoring> scoring = scenario.has(EventKeys.SCORING)
                ? scenario.block(EventKeys.SCORING).flatMap(BowlingReader::scoring)
                : Optional.of(Scoring.USUAL);
        Optional<Bowling> bowling = scenario.blockOrUsual(EventKeys.BOWLERS)
                .flatMap(section -> bowling(section, scenario.has(EventKeys.BOWLERS)));
        return bowling.flatMap(
                known -> scoring.map(rules -> new Bowling(known.knowledge(), known.tiringShare(), rules)));
    }

    private static Optional<Bowling> bowling(Section section, boolean isStated) {
        return section.build(() -> {
            Knowledge knowledge = section.get(BowlerKeys.KNOWLEDGE);
            double tiring = isStated ? section.get(BowlerKeys.TIRING) : Bowling.USUAL.tiringShare();
            return new Bowling(knowledge, tiring, Scoring.USUAL);
        });
    }

    private static Optional<Scoring> scoring(Section section) {
        return section.build(() ->
                new Scoring(section.get(RuleKeys.SYSTEM), section.get(RuleKeys.NO_TAP), section.get(RuleKeys.FOULS)));
    }
}
