package lanetide.cli.fairness;

import java.util.List;
import lanetide.cli.report.CsvRows;
import lanetide.cli.report.Figures;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.EffectKind;
import lanetide.squads.fairness.FairnessResult;

/** The advantages as a table: one row for each. */
public final class FairnessCsv {
    private static final List<String> HEAD = List.of(
            "kind", "id", "bowlers", "advantagePinsPerGame", "standardErrorPins", "low", "high", "unfairP", "verdict");

    private FairnessCsv() {}

    /**
     * Writes the table.
     *
     * @param result what came of the study
     * @return the table with its head
     */
    public static String write(FairnessResult result) {
        return CsvRows.table(HEAD, rows -> {
            for (Effect effect : result.effects()) {
                rows.row(
                        EffectWords.kind(effect.kind()),
                        effect.kind() == EffectKind.PAIR ? effect.id().replace("-", " and ") : effect.id(),
                        effect.bowlers(),
                        Figures.fixed(effect.advantagePins(), 3),
                        Figures.fixed(effect.standardErrorPins(), 4),
                        Figures.fixed(effect.ci90().low(), 3),
                        Figures.fixed(effect.ci90().high(), 3),
                        Figures.fixed(effect.unfairP(), 5),
                        EffectWords.verdict(effect.verdict()));
            }
        });
    }
}
