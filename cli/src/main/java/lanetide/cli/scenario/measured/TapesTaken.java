package lanetide.cli.scenario.measured;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;

/** What tapes read, each place on a lane once at a time. */
final class TapesTaken {
    private static final double MM = 1000;
    private static final String UNITS = "units or um";
    private static final Form<Double> FILM = Form.quantity(Measure.FILM, UNITS, PatternKeys.FILM.range());
    private static final Form<Double> ERROR = Form.quantity(Measure.FILM, UNITS, Range.above(0, 20));

    private final Once<TapeTaken> tapes;

    TapesTaken(List<TapeTaken> before) {
        tapes = new Once<>(Spot::of, TapeTaken::place, before);
    }

    /** Where and when a tape was taken, distances told apart to the millimetre. */
    private record Spot(int lane, When when, long distanceMm, int board) {
        static Spot of(TapeTaken tape) {
            return new Spot(tape.lane(), tape.when(), Math.round(tape.distanceM() * MM), tape.board());
        }
    }

    void read(Rows rows) {
        rows.table().rows().forEach(row -> read(rows, row));
    }

    private void read(Rows rows, CsvTable.Row row) {
        Optional<Integer> lane = rows.lane(row);
        Optional<When> when = rows.when(row, rows.squad(row), lane);
        Optional<Double> distanceM = rows.read(row, Column.DISTANCE, PatternKeys.AT.form());
        Optional<Integer> board = rows.read(row, Column.BOARD, PatternKeys.BOARD);
        Optional<Double> units = rows.read(row, Column.OIL, FILM);
        Optional<Double> error = rows.readOr(row, Column.OIL_ERROR, ERROR, TapeTaken.USUAL_ERROR_UNITS);
        if (when.isPresent() && distanceM.isPresent() && board.isPresent() && units.isPresent() && error.isPresent()) {
            TapeTaken tape = new TapeTaken(
                    lane.orElseThrow(),
                    when.get(),
                    distanceM.get(),
                    board.get(),
                    units.get(),
                    error.get(),
                    rows.table().place(row));
            tapes.add(tape).ifPresent(earlier -> twice(rows, row, tape, earlier));
        }
    }

    private static void twice(Rows rows, CsvTable.Row row, TapeTaken tape, String earlier) {
        rows.table()
                .value(row, Column.BOARD)
                .refuse(
                        NoticeCode.READING_TWICE,
                        ", of which " + earlier + " has a reading of lane " + tape.lane() + " at "
                                + Range.round(tape.distanceM() / LaneGeometry.FOOT_M)
                                + " ft at the same time; there must be one. Write the mean of the two.");
    }

    List<TapeTaken> all() {
        return tapes.all();
    }
}
