package lanetide.cli.page;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.fairness.EffectWords;
import lanetide.cli.reoil.ReoilWords;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.squads.recondition.Basis;
import lanetide.squads.recondition.CurvePoint;
import lanetide.squads.recondition.Interval;
import lanetide.squads.recondition.ReoilResult;

/** When to oil again. */
final class ReoilSection {
    private ReoilSection() {}

    static PageModel.Reoil of(ReoilResult result) {
        Interval cost = result.interval(Basis.COST);
        String recommendation = "Oil all lanes again after " + ReoilWords.games(cost) + " on a pair (90 % interval "
                + ReoilWords.range(cost) + "). " + ReoilWords.sentence(result, cost);
        List<String> others = result.intervals().stream()
                .filter(interval -> interval.basis() != Basis.COST)
                .map(interval ->
                        ReoilWords.sentence(result, interval) + " 90 % interval: " + ReoilWords.range(interval) + ".")
                .toList();
        String currency = result.plan().costs().currency();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Games on a pair",
                "Windows moved (boards)",
                "Windows wide (boards)",
                "Pocket hits (%)",
                "Scores changed (pins)",
                "Cost of a game (" + currency + ")"));
        for (CurvePoint point : result.curve()) {
            rows.add(List.of(
                    String.valueOf(point.games()),
                    Figures.fixed(point.windowShiftBoards(), 1),
                    Figures.fixed(point.windowWidthBoards(), 1),
                    Figures.fixed(100 * point.pocketShare(), 0),
                    EffectWords.signed(point.spreadPins()).replace("+", ""),
                    Figures.fixed(point.costPerGame(), 2)));
        }
        return new PageModel.Reoil(
                recommendation, others, Table.of("reoil-curve", "What a pair is like after so many games", rows, 1));
    }
}
