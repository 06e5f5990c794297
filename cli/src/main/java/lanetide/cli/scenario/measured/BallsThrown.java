package lanetide.cli.scenario.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.OwnKeys;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.measured.BallSeen;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.When;

/** Balls that somebody watched, each with what was noted of it. */
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
        boolean onSomeLane = !rows.table().says(row, Column.LANE);
        boolean bySomebody = !rows.table().says(row, Column.BOWLER);
        Optional<Integer> squad = rows.squad(row);
        Optional<Integer> lane = onSomeLane ? Optional.empty() : rows.lane(row);
        Optional<When> when = onSomeLane ? rows.when(row, squad) : rows.when(row, squad, lane);
        Optional<String> bowler = bySomebody ? Optional.empty() : rows.bowler(row, squad);
        Optional<BallSeen> seen = seen(rows, row);
        Optional<OptionalDouble> speed = rows.readIfAny(row, Column.SPEED, OwnKeys.SPEED.form());
        Optional<OptionalDouble> spin = rows.readIfAny(row, Column.REVS, OwnKeys.REV_RATE.form());
        boolean sound = when.isPresent()
                && (bySomebody || bowler.isPresent())
                && seen.isPresent()
                && speed.isPresent()
                && spin.isPresent();
        if (sound) {
            BallThrown ball = new BallThrown(
                    lane.map(OptionalInt::of).orElseGet(OptionalInt::empty),
                    when.get(),
                    bowler,
                    seen.get(),
                    speed.get(),
                    spin.get(),
                    rows.table().place(row));
            balls.add(ball);
            if (!ball.seen().tellsItsWay()
                    && !(ball.tellsWhereHePlays() && rows.names().isFresh(ball.when()))) {
                tellsNothing(rows, row);
            }
        }
    }

    private static Optional<BallSeen> seen(Rows rows, CsvTable.Row row) {
        Optional<OptionalDouble> laydown = rows.readIfAny(row, Column.LAYDOWN, BOARDS);
        Optional<OptionalDouble> arrows = rows.readIfAny(row, Column.ARROWS, BOARDS);
        Optional<OptionalDouble> met = rows.readIfAny(row, Column.MET, BOARDS);
        Optional<OptionalDouble> passed = rows.readIfAny(row, Column.PASSED, BOARDS);
        Optional<OptionalDouble> distanceM = distanceM(rows, row);
        Optional<Double> error = rows.readOr(row, Column.SEEN_ERROR, ERROR, BallSeen.USUAL_ERROR_BOARDS);
        boolean sound =
                Stream.of(laydown, arrows, met, passed, distanceM, error).allMatch(Optional::isPresent);
        return sound
                ? Optional.of(new BallSeen(
                        laydown.get(), arrows.get(), passed(distanceM.get(), passed.get()), met.get(), error.get()))
                : Optional.empty();
    }

    private static Optional<BallSeen.Passed> passed(OptionalDouble distanceM, OptionalDouble board) {
        return board.isPresent() && distanceM.isPresent()
                ? Optional.of(new BallSeen.Passed(distanceM.getAsDouble(), board.getAsDouble()))
                : Optional.empty();
    }

    /** A board without its distance is a fault; a distance at which nobody saw the ball is none. */
    private static Optional<OptionalDouble> distanceM(Rows rows, CsvTable.Row row) {
        if (rows.table().says(row, Column.PASSED) && !rows.table().says(row, Column.DISTANCE)) {
            rows.table()
                    .value(row, Column.PASSED)
                    .refuse(
                            NoticeCode.READINGS_INCOMPLETE,
                            ", and the row tells no distance; a board that a ball passed must have one."
                                    + " Name a column `distance` and fill it in, or leave the board out.");
            return Optional.empty();
        }
        return rows.readIfAny(row, Column.DISTANCE, PatternKeys.AT.form());
    }

    private static void tellsNothing(Rows rows, CsvTable.Row row) {
        rows.table()
                .first(row)
                .refuse(
                        NoticeCode.VALUE_WITHOUT_EFFECT,
                        ", and nothing can be learnt from this ball: nobody noted where it met the pins, where it passed a"
                                + " distance, or, on fresh oil, who played which board at the arrows. Fill one in, or take"
                                + " the row out.");
    }

    List<BallThrown> all() {
        return balls;
    }
}
