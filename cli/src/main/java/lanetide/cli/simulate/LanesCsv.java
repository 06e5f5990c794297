package lanetide.cli.simulate;

import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.CsvRows;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.StyleWindow;

/** The lanes game by game as a table: one row for each lane, game, style and hand. */
public final class LanesCsv {
    private static final List<String> HEAD = List.of(
            "lane",
            "squad",
            "afterGame",
            "gamesOnOil",
            "volumeMl",
            "headUnits",
            "headUnitsLow",
            "carrydownMl",
            "style",
            "hand",
            "low",
            "high",
            "best");

    private LanesCsv() {}

    /**
     * Writes the table; a window that does not exist leaves its cells empty.
     *
     * @param states the lanes
     * @return the table with its head
     */
    public static String write(List<LaneState> states) {
        return CsvRows.table(HEAD, rows -> {
            for (LaneState state : states) {
                write(rows, state);
            }
        });
    }

    private static void write(CsvRows rows, LaneState state) {
        List<Object> lane = List.of(
                state.lane(),
                state.squad(),
                state.afterGame(),
                state.gamesOnOil(),
                CsvRows.number(state.volumeMl(), 3),
                CsvRows.number(state.headUnits(), 2),
                CsvRows.number(state.headUnitsLow(), 2),
                CsvRows.number(state.carrydownMl(), 4));
        if (state.windows().isEmpty()) {
            rows.row(joined(lane, List.of("", "", "", "", "")));
        }
        for (StyleWindow window : state.windows()) {
            rows.row(joined(
                    lane,
                    List.of(
                            window.style(),
                            ConstantName.of(window.hand()),
                            CsvRows.number(window.low(), 2),
                            CsvRows.number(window.high(), 2),
                            CsvRows.number(window.best(), 2))));
        }
    }

    private static List<Object> joined(List<Object> lane, List<?> window) {
        return Stream.concat(lane.stream(), window.stream()).toList();
    }
}
