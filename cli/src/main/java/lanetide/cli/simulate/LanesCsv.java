package lanetide.cli.simulate;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.CsvColumns;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.StyleWindow;

/** The lanes game by game as a table: one row for each lane, game, style and hand. */
public final class LanesCsv {
    private LanesCsv() {}

    /** A lane after a game, and one of its windows; none where it has no window. */
    private record Row(LaneState lane, Optional<StyleWindow> window) {
        static Stream<Row> of(LaneState lane) {
            return lane.windows().isEmpty()
                    ? Stream.of(new Row(lane, Optional.empty()))
                    : lane.windows().stream().map(window -> new Row(lane, Optional.of(window)));
        }

        Optional<StyleWindow.Boards> boards() {
            return window.flatMap(StyleWindow::boards);
        }
    }

    /**
     * Writes the table; a window that does not exist leaves its cells empty.
     *
     * @param states the lanes
     * @return the table with its head
     */
    public static String write(List<LaneState> states) {
        return new CsvColumns<Row>()
                .add("lane", row -> row.lane().lane())
                .add("squad", row -> row.lane().squad())
                .add("afterGame", row -> row.lane().afterGame())
                .add("gamesOnOil", row -> row.lane().gamesOnOil())
                .add("volumeMl", row -> row.lane().volumeMl(), 3)
                .add("headUnits", row -> row.lane().headUnits(), 2)
                .add("headUnitsLow", row -> row.lane().headUnitsLow(), 2)
                .add("carrydownMl", row -> row.lane().carrydownMl(), 4)
                .add("style", row -> row.window().map(StyleWindow::style).orElse(""))
                .add(
                        "hand",
                        row -> row.window()
                                .map(window -> ConstantName.of(window.hand()))
                                .orElse(""))
                .add("low", Row::boards, StyleWindow.Boards::low, 2)
                .add("high", Row::boards, StyleWindow.Boards::high, 2)
                .add("best", Row::boards, StyleWindow.Boards::best, 2)
                .table(states.stream().flatMap(Row::of).toList());
    }
}
