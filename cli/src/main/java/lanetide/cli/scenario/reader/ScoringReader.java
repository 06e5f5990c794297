package lanetide.cli.scenario.reader;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.ByName;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.Scoring;
import lanetide.squads.score.ScoreCard;
import lanetide.squads.score.ScoringSystem;

/** Reads how an event is scored. */
final class ScoringReader {
    private final Notices notices;
    private final Assumptions assumptions;

    ScoringReader(Notices notices, Assumptions assumptions) {
        this.notices = notices;
        this.assumptions = assumptions;
    }

    Optional<Scoring> read(Section scenario) {
        return scenario.has("scoring")
                ? scenario.block("scoring", Block.SCORING).flatMap(this::scoring)
                : Optional.of(Scoring.USUAL);
    }

    private Optional<Scoring> scoring(Section section) {
        int before = notices.errors();
        Optional<ScoringSystem> system = system(section);
        OptionalInt strikePins = section.get("noTap")
                .map(value -> value.whole(Measure.PINS, 1, ScoreCard.PINS))
                .orElse(OptionalInt.of(Scoring.USUAL.strikePins()));
        double fouls = section.quantity("fouls", Measure.SHARE, Range.between(0, 0.2), Defaults.FOULS, assumptions);
        return section.build(before, () -> new Scoring(system.orElseThrow(), strikePins.getAsInt(), fouls));
    }

    private static Optional<ScoringSystem> system(Section section) {
        if (!section.has("system")) {
            return Optional.of(Scoring.USUAL.system());
        }
        Map<String, ScoringSystem> known = ByName.of(ScoringSystem.values(), ScoringSystem::id);
        return section.get("system").flatMap(value -> value.oneOf(known, "way of scoring"));
    }
}
