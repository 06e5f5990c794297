package lanetide.cli.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import lanetide.cli.report.EffectWords;
import lanetide.cli.report.Figures;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.EffectKind;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.Reason;
import lanetide.squads.fairness.Verdict;

/** Whether the event is fair, and to whom not. */
final class FairnessSection {
    private FairnessSection() {}

    static PageModel.Fairness of(FairnessResult result) {
        String verdict = "The event is " + EffectWords.verdict(result.verdict()) + ", if up to "
                + Figures.plain(result.plan().marginPins(), 2) + " pins a game count as fair (from " + result.playings()
                + " playings).";
        List<String> unfair = result.effects().stream()
                .filter(effect -> effect.verdict() == Verdict.UNFAIR)
                .sorted(Comparator.comparingDouble(Effect::advantagePins))
                .map(effect -> capital(EffectWords.who(effect)) + ": " + EffectWords.howMuch(effect) + ".")
                .toList();
        List<Table> tables = new ArrayList<>();
        for (EffectKind kind : EffectKind.values()) {
            List<List<String>> rows = rows(result, kind);
            if (rows.size() > 1) {
                tables.add(Table.of("effects-" + EffectWords.kind(kind), EffectWords.heading(kind), rows, 1));
            }
        }
        return new PageModel.Fairness(
                verdict, unfair, result.reasons().stream().map(Reason::text).toList(), tables);
    }

    private static List<List<String>> rows(FairnessResult result, EffectKind kind) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(capital(EffectWords.kind(kind)), "Bowlers", "Pins a game", "90 % interval", "Verdict"));
        result.effects().stream()
                .filter(effect -> effect.kind() == kind)
                .forEach(effect -> rows.add(List.of(
                        effect.id(),
                        String.valueOf(effect.bowlers()),
                        EffectWords.signed(effect.advantagePins()),
                        EffectWords.interval(effect),
                        EffectWords.verdict(effect.verdict()))));
        return rows;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
