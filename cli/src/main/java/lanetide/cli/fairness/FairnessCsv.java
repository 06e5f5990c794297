package lanetide.cli.fairness;

import lanetide.cli.report.CsvColumns;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.EffectKind;

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
        return new CsvColumns<Effect>()
                .add("kind", effect -> EffectWords.kind(effect.kind()))
                .add("id", FairnessCsv::id)
                .add("bowlers", Effect::bowlers)
                .add("advantagePinsPerGame", Effect::advantagePins, 3)
                .add("standardErrorPins", Effect::standardErrorPins, 4)
                .add("low", effect -> effect.ci90().low(), 3)
                .add("high", effect -> effect.ci90().high(), 3)
                .add("luckLow", effect -> effect.luck90().low(), 3)
                .add("luckHigh", effect -> effect.luck90().high(), 3)
                .add("signShare", Effect::signShare, 3)
                .add("unfairP", Effect::unfairP, 5)
                .add("verdict", effect -> EffectWords.verdict(effect.verdict()))
                .add(
                        "ifNobodyMoves",
                        effect -> answer.bounds().map(bounds -> bounds.ifNobodyMoves(effect)),
                        Effect::advantagePins,
                        3)
                .add(
                        "ifAllKnow",
                        effect -> answer.bounds().map(bounds -> bounds.ifAllKnow(effect)),
                        Effect::advantagePins,
                        3)
                .add(
                        "usualValues",
                        effect -> answer.bounds().flatMap(bounds -> bounds.asUsual(effect)),
                        Effect::advantagePins,
                        3)
                .table(answer.result().effects());
    }

    private static String id(Effect effect) {
        return effect.kind() == EffectKind.PAIR ? effect.id().replace("-", " and ") : effect.id();
    }
}
