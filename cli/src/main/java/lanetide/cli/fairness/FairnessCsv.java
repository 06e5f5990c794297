package lanetide.cli.fairness;

import java.util.Optional;
import java.util.function.BiFunction;
import lanetide.cli.report.CsvColumns;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.fairness.Bounds;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.EffectKind;
import lanetide.squads.qualifying.CutChances.Found;

/** The advantages as a table: one row for each. */
public final class FairnessCsv {
    private FairnessCsv() {}

    /**
     * Writes the table.
     *
     * @param answer what came of the study
     * @return the table with its head
     */
    public static String write(FairnessAnswer answer) {
        CsvColumns<FairnessRow> columns = new CsvColumns<FairnessRow>()
                .add("kind", FairnessRow::kind)
                .add("id", FairnessRow::id)
                .add("bowlers", FairnessRow::bowlers)
                .add("advantagePinsPerGame", FairnessRow::effect, Effect::advantagePins, 3)
                .add("standardErrorPins", FairnessRow::effect, Effect::standardErrorPins, 4)
                .add("low", FairnessRow::ci90, ConfidenceInterval::low, 3)
                .add("high", FairnessRow::ci90, ConfidenceInterval::high, 3)
                .add("luckLow", FairnessRow::luck90, ConfidenceInterval::low, 3)
                .add("luckHigh", FairnessRow::luck90, ConfidenceInterval::high, 3)
                .add("signShare", FairnessRow::effect, Effect::signShare, 3)
                .add("unfairP", FairnessRow::effect, Effect::unfairP, 5)
                .add(
                        "verdict",
                        row -> row.effect()
                                .map(effect -> EffectWords.verdict(effect.verdict()))
                                .orElse(""))
                .add("ifNobodyMoves", row -> bound(row, answer, Bounds::ifNobodyMoves), Effect::advantagePins, 3)
                .add("ifAllKnow", row -> bound(row, answer, Bounds::ifAllKnow), Effect::advantagePins, 3)
                .add(
                        "usualValues",
                        row -> row.effect().flatMap(effect -> answer.bounds().flatMap(all -> all.asUsual(effect))),
                        Effect::advantagePins,
                        3);
        if (answer.result().cut().isPresent()) {
            addCut(columns);
        }
        return columns.table(FairnessRow.of(answer.result(), FairnessCsv::id));
    }

    private static Optional<Effect> bound(
            FairnessRow row, FairnessAnswer answer, BiFunction<Bounds, Effect, Effect> like) {
        return row.effect().flatMap(effect -> answer.bounds().map(bounds -> like.apply(bounds, effect)));
    }

    /** The intervals of a row with a squad are those of {@code chanceMore}, of others those of {@code chance}. */
    private static void addCut(CsvColumns<FairnessRow> columns) {
        columns.add("cutPins", FairnessRow::score, Found::value, 2)
                .add("level", row -> row.level().map(CutTables::name).orElse(""))
                .add("chance", FairnessRow::chance, chance -> chance, 5)
                .add("chanceMore", FairnessRow::squad, squad -> squad.more().value(), 5)
                .add("chanceLow", FairnessRow::found, found -> found.ci90().low(), 5)
                .add("chanceHigh", FairnessRow::found, found -> found.ci90().high(), 5)
                .add(
                        "chanceLuckLow",
                        FairnessRow::found,
                        found -> found.luck90().low(),
                        5)
                .add(
                        "chanceLuckHigh",
                        FairnessRow::found,
                        found -> found.luck90().high(),
                        5)
                .add(
                        "chanceSignShare",
                        FairnessRow::squad,
                        squad -> squad.more().signShare(),
                        3);
    }

    private static String id(Effect effect) {
        return effect.kind() == EffectKind.PAIR ? effect.id().replace("-", " and ") : effect.id();
    }
}
