package lanetide.cli.scenario.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.OwnKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.When;

/** Balls that somebody followed to the pins. */
final class BallsThrown {
    private static final Form<Double> BOARDS = Form.boards(1, LaneGeometry.BOARDS);
    private static final Form<Double> ERROR = Form.quantity(Measure.BOARDS, "boards", Range.above(0, 10));

    private final List<BallThrown> balls;

    BallsThrown(List<BallThrown> before) {
        balls = new ArrayList<>(before);
    }

    void read(Rows rows) {
        rows.table().rows().forEach(row -> read(rows, row));
    }

    private void read(Rows rows, CsvTable.Row row) {
        Optional<Integer> lane = rows.lane(row);
        Optional<Integer> squad = rows.squad(row);
        Optional<When> when = rows.when(row, squad, lane);
        Optional<String> bowler = rows.bowler(row, squad);
        Optional<Double> laydown = rows.read(row, Column.LAYDOWN, BOARDS);
        Optional<Double> arrows = rows.read(row, Column.ARROWS, BOARDS);
        Optional<Double> met = rows.read(row, Column.MET, BOARDS);
        Optional<OptionalDouble> speed = rows.readIfAny(row, Column.SPEED, OwnKeys.SPEED.form());
        Optional<OptionalDouble> spin = rows.readIfAny(row, Column.REVS, OwnKeys.REV_RATE.form());
        Optional<Double> error = rows.readOr(row, Column.MET_ERROR, ERROR, BallThrown.USUAL_ERROR_BOARDS);
        boolean whereKnown = laydown.isPresent() && arrows.isPresent() && met.isPresent();
        boolean howKnown = speed.isPresent() && spin.isPresent() && error.isPresent();
        if (when.isPresent() && bowler.isPresent() && whereKnown && howKnown) {
            balls.add(new BallThrown(
                    lane.orElseThrow(),
                    when.get(),
                    bowler.get(),
                    laydown.get(),
                    arrows.get(),
                    met.get(),
                    speed.get(),
                    spin.get(),
                    error.get(),
                    rows.table().place(row)));
        }
    }

    List<BallThrown> all() {
        return balls;
    }
}
