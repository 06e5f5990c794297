package lanetide.cli.scenario.reader;

import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.ByName;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.value.Section;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.squads.model.Laws;

/** Reads which laws a scenario is played under. */
final class LawsReader {
    private static final String REASON = "usual; its reasons are in oilflow/README.md";

    private final Assumptions assumptions;

    LawsReader(Assumptions assumptions) {
        this.assumptions = assumptions;
    }

    Optional<Laws> read(Section scenario) {
        if (!scenario.has("laws")) {
            assumptions.add("laws.friction", Laws.USUAL.friction().id(), REASON);
            assumptions.add("laws.split", Laws.USUAL.split().id(), REASON);
            return Optional.of(Laws.USUAL);
        }
        return scenario.block("laws", Block.LAWS).flatMap(this::laws);
    }

    private Optional<Laws> laws(Section section) {
        Optional<FrictionModel> friction = choice(
                section, "friction", ByName.of(FrictionModel.values(), FrictionModel::id), Laws.USUAL.friction());
        Optional<SplitModel> split =
                choice(section, "split", ByName.of(SplitModel.values(), SplitModel::id), Laws.USUAL.split());
        return friction.flatMap(law -> split.map(parting -> new Laws(law, parting)));
    }

    private <T> Optional<T> choice(Section section, String key, Map<String, T> known, T usual) {
        if (section.has(key)) {
            return section.get(key).flatMap(value -> value.oneOf(known, key + " law"));
        }
        known.forEach((name, law) -> {
            if (law.equals(usual)) {
                assumptions.add(section.pathOf(key), name, REASON);
            }
        });
        return Optional.of(usual);
    }
}
