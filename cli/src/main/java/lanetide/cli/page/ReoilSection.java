package lanetide.cli.page;

import java.util.List;
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
        List<String> head = List.of(
                "Games on a pair",
                "Windows moved (boards)",
                "Windows wide (boards)",
                "Pocket hits (%)",
                "Scores changed (pins)",
                "Cost of a game (" + result.plan().costs().currency() + ")");
        List<List<String>> rows = Table.rows(head, result.curve(), ReoilSection::row);
        return new PageModel.Reoil(
                ReoilWords.recommendation(result) + " " + ReoilWords.sureness(result) + " "
                        + ReoilWords.sentence(result, cost),
                ReoilWords.others(result),
                Table.of("reoil-curve", "What a pair is like after so many games", rows, 1));
    }

    private static List<String> row(CurvePoint point) {
        return List.of(
                String.valueOf(point.games()),
                Figures.fixed(point.windowShiftBoards(), 1),
                Figures.fixed(point.windowWidthBoards(), 1),
                Figures.percent(point.pocketShare()),
                Figures.fixed(point.spreadPins(), 1),
                Figures.fixed(point.costPerGame(), 2));
    }
}
