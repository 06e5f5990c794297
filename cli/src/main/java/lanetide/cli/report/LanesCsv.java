package lanetide.cli.report;

import java.io.IOException;
import java.util.List;
import lanetide.squads.play.LaneState;
import lanetide.squads.play.StyleWindow;
import org.apache.commons.csv.CSVPrinter;

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
        return CsvAnswer.write(HEAD, printer -> {
            for (LaneState state : states) {
                write(printer, state);
            }
        });
    }

    private static void write(CSVPrinter printer, LaneState state) throws IOException {
        if (state.windows().isEmpty()) {
            lane(printer, state);
            for (int cell = 0; cell < 5; cell++) {
                printer.print("");
            }
            printer.println();
        }
        for (StyleWindow window : state.windows()) {
            lane(printer, state);
            printer.print(window.style());
            printer.print(ConstantName.of(window.hand()));
            printer.print(cell(window.low(), 2));
            printer.print(cell(window.high(), 2));
            printer.print(cell(window.best(), 2));
            printer.println();
        }
    }

    private static void lane(CSVPrinter printer, LaneState state) throws IOException {
        printer.print(state.lane());
        printer.print(state.squad());
        printer.print(state.afterGame());
        printer.print(state.gamesOnOil());
        printer.print(cell(state.volumeMl(), 3));
        printer.print(cell(state.headUnits(), 2));
        printer.print(cell(state.headUnitsLow(), 2));
        printer.print(cell(state.carrydownMl(), 4));
    }

    private static String cell(double value, int decimals) {
        return Double.isNaN(value) ? "" : Figures.fixed(value, decimals);
    }
}
