package lanetide.cli.simulate;

import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Function;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.CsvRows;
import lanetide.cli.report.Figures;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.result.ShotBowled;
import lanetide.squads.watch.ShotObserver;

/** Every ball as a row of a table (RFC 4180, UTF-8, lines end in CR LF), written as it is bowled. */
public final class ShotCsv implements ShotObserver {
    /** The columns in their order. */
    public static final List<Column> COLUMNS = List.of(
            new Column("timeS", "s", "release, from midnight before the first day", s -> fixed(s.timeMs() / 1000.0, 3)),
            new Column("squad", "", "squad's name", ShotBowled::squad),
            new Column("group", "", "group's name in the squad", ShotBowled::group),
            new Column("bowler", "", "bowler's name", s -> s.bowler().id()),
            new Column(
                    "hand", "", "right or left", s -> ConstantName.of(s.bowler().hand())),
            new Column("style", "", "playing style", s -> s.bowler().style().id()),
            new Column("level", "", "level of skill", s -> s.bowler().level().id()),
            new Column(
                    "cover",
                    "",
                    "cover of the ball thrown",
                    s -> (s.ofSpareBall() ? s.bowler().spareCover() : s.bowler().cover()).id()),
            new Column("lane", "", "lane number", s -> String.valueOf(s.lane())),
            new Column("game", "", "game from 1; 0 in practice", s -> String.valueOf(s.game())),
            new Column("frame", "", "frame from 1; 0 in practice", s -> String.valueOf(s.frame())),
            new Column("ball", "", "ball of the frame from 1; 0 in practice", s -> String.valueOf(s.ball())),
            new Column(
                    "aimLaydownBoard",
                    "boards",
                    "where the bowler meant to lay the ball down",
                    s -> fixed(s.path().meant().laydownBoard(), 2)),
            new Column(
                    "aimArrowsBoard",
                    "boards",
                    "where he meant to cross the arrows",
                    s -> fixed(s.path().meant().arrowsBoard(), 2)),
            new Column(
                    "laydownBoard",
                    "boards",
                    "where he laid it down",
                    s -> fixed(s.path().thrown().laydownBoard(), 2)),
            new Column(
                    "arrowsBoard",
                    "boards",
                    "where his release pointed at the arrows, the ball's own hook left out",
                    s -> fixed(s.path().thrown().arrowsBoard(), 2)),
            new Column(
                    "launchDeg",
                    "degrees",
                    "launch angle, positive to his own gutter",
                    s -> fixed(StrictMath.toDegrees(s.path().thrown().launchRad()), 3)),
            new Column(
                    "speedMph",
                    "mph",
                    "speed at release",
                    s -> fixed(s.path().release().speedMps() / Release.MPH_MPS, 2)),
            new Column(
                    "revRateRpm",
                    "rpm",
                    "rev rate at release",
                    s -> fixed(s.path().release().spinRadps() / Release.RPM_RADPS, 1)),
            new Column("rollS", "s", "time to the pins", s -> atPins(s, s.path().timeS(), 3)),
            new Column(
                    "arrivalBoard",
                    "boards",
                    "where it met the pins; empty if it left the lane",
                    s -> atPins(s, s.path().arrivalBoard(), 2)),
            new Column(
                    "entryDeg",
                    "degrees",
                    "entry angle, away from his own gutter; empty if it left the lane",
                    s -> atPins(s, StrictMath.toDegrees(s.path().entryRad()), 3)),
            new Column("pinsBefore", "", "pins that stood before, such as 3 6 10", s -> pins(s, s.standing())),
            new Column("pinsAfter", "", "pins that stood after, or none", s -> pins(s, s.left())),
            new Column(
                    "pinfall",
                    "pins",
                    "pins that fell",
                    s -> String.valueOf(Integer.bitCount(s.standing()) - Integer.bitCount(s.left()))));

    private final CsvRows rows;

    /**
     * Writes the head of the table.
     *
     * @param out where rows go
     * @throws UncheckedIOException if it cannot be written
     */
    public ShotCsv(Appendable out) {
        this.rows = new CsvRows(out, COLUMNS.stream().map(Column::name).toList());
    }

    /**
     * A column.
     *
     * @param name its name in the head
     * @param unit unit of its values; empty for none
     * @param meaning what stands in it
     * @param of a ball's value
     */
    public record Column(String name, String unit, String meaning, Function<ShotBowled, String> of) {}

    @Override
    public void onShot(ShotBowled shot) {
        rows.row(COLUMNS.stream().map(column -> column.of().apply(shot)).toList());
    }

    /**
     * Pins as they are numbered in the house, from the right-hander's side; with hyphens they could be taken for a
     * date.
     */
    private static String pins(ShotBowled shot, int bits) {
        boolean left = shot.bowler().hand() == Hand.LEFT;
        return Rack.format(left ? Rack.mirrored(bits) : bits).replace('-', ' ');
    }

    private static String atPins(ShotBowled shot, double value, int decimals) {
        return shot.path().reachedPins() ? fixed(value, decimals) : "";
    }

    private static String fixed(double value, int decimals) {
        return Figures.fixed(value, decimals);
    }
}
