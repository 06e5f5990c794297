package lanetide.cli.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.qualifying.CutChances;
import lanetide.squads.qualifying.CutChances.Found;
import lanetide.squads.qualifying.CutChances.InSquad;
import lanetide.squads.qualifying.CutChances.OfLevel;

/**
 * A row of the table: an advantage, the expected score of the cut, the chance of a level, or that of a level in a
 * squad.
 *
 * @param kind what it is about
 * @param id name of the class or squad; empty for none
 * @param bowlers bowlers of the class, or people of the level
 * @param effect the advantage
 * @param score the score of the cut
 * @param level the level
 * @param squad the squad in which the level is placed
 */
record FairnessRow(
        String kind,
        String id,
        int bowlers,
        Optional<Effect> effect,
        Optional<Found> score,
        Optional<OfLevel> level,
        Optional<InSquad> squad) {
    /** All rows, the advantages first. */
    static List<FairnessRow> of(FairnessResult result, Function<Effect, String> id) {
        List<FairnessRow> rows = new ArrayList<>(result.effects().stream()
                .map(effect -> new FairnessRow(
                        EffectWords.kind(effect.kind()),
                        id.apply(effect),
                        effect.bowlers(),
                        Optional.of(effect),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))
                .toList());
        result.cut().ifPresent(cut -> addCut(rows, cut));
        return rows;
    }

    private static void addCut(List<FairnessRow> rows, CutChances cut) {
        rows.add(new FairnessRow(
                "cut-score",
                "",
                cut.people(),
                Optional.empty(),
                Optional.of(cut.score()),
                Optional.empty(),
                Optional.empty()));
        for (OfLevel level : cut.levels()) {
            rows.add(ofLevel("cut", level, Optional.empty()));
            level.squads().forEach(squad -> rows.add(ofLevel("cut-squad", level, Optional.of(squad))));
        }
    }

    private static FairnessRow ofLevel(String kind, OfLevel level, Optional<InSquad> squad) {
        return new FairnessRow(
                kind,
                squad.map(InSquad::squad).orElse(""),
                level.people(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(level),
                squad);
    }

    /** The 90 % interval of pins. */
    Optional<ConfidenceInterval> ci90() {
        return effect.map(Effect::ci90).or(() -> score.map(Found::ci90));
    }

    /** The interval of pins by luck alone. */
    Optional<ConfidenceInterval> luck90() {
        return effect.map(Effect::luck90).or(() -> score.map(Found::luck90));
    }

    /** The chance to go on, of the level in the squad if there is one. */
    Optional<Double> chance() {
        return level.map(known -> squad.map(place -> CutTables.there(known, place))
                .orElse(known.chance().value()));
    }

    /** What the intervals of the chance are of: what a squad is worth, or the chance itself. */
    Optional<Found> found() {
        return Stream.of(squad.map(InSquad::more), level.map(OfLevel::chance))
                .flatMap(Optional::stream)
                .findFirst();
    }
}
