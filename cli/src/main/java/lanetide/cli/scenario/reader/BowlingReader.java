package lanetide.cli.scenario.reader;

import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.ByName;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Knowledge;
import lanetide.squads.model.Scoring;

/** Reads what all bowlers of an event have in common, and how they are scored. */
final class BowlingReader {
    private final Notices notices;
    private final Assumptions assumptions;

    BowlingReader(Notices notices, Assumptions assumptions) {
        this.notices = notices;
        this.assumptions = assumptions;
    }

    Optional<Bowling> read(Section scenario) {
        Optional<Scoring> scoring = new ScoringReader(notices, assumptions).read(scenario);
        if (!scenario.has("bowlers")) {
            usualKnowledge();
            return scoring.map(rules -> new Bowling(Bowling.USUAL.knowledge(), Bowling.USUAL.tiringShare(), rules));
        }
        return scenario.block("bowlers", Block.BOWLERS).flatMap(section -> bowling(section, scoring));
    }

    private Optional<Bowling> bowling(Section section, Optional<Scoring> scoring) {
        int before = notices.errors();
        Optional<Knowledge> knowledge = knowledge(section);
        double tiring = section.quantity("tiring", Measure.SHARE, Range.between(0, 0.1), Defaults.TIRING, assumptions);
        return scoring.isEmpty()
                ? Optional.empty()
                : section.build(before, () -> new Bowling(knowledge.orElseThrow(), tiring, scoring.get()));
    }

    private Optional<Knowledge> knowledge(Section section) {
        if (section.has("knowledge")) {
            Map<String, Knowledge> known = ByName.of(Knowledge.values(), Knowledge::id);
            return section.get("knowledge").flatMap(value -> value.oneOf(known, "knowledge"));
        }
        usualKnowledge();
        return Optional.of(Bowling.USUAL.knowledge());
    }

    private void usualKnowledge() {
        assumptions.add(
                "bowlers.knowledge",
                Bowling.USUAL.knowledge().id(),
                "bowlers see their own balls, not the oil; squads/README.md says how");
    }
}
