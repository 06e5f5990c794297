package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;

/** Rows of the validation table that were not looked at while values were chosen: friction, roll, a published start. */
final class HeldOutRows {
    private static final double UNIT_UM = OilFilm.UNIT_UM;

    private final List<ValidationRow> rows = new ArrayList<>();

    private HeldOutRows() {
        friction();
        roll();
        publishedStart();
    }

    static List<ValidationRow> rows() {
        return new HeldOutRows().rows;
    }

    private void friction() {
        FrictionLaw law = Lanes.player("tweener").contact().friction();
        double under20 = law.coefficient(20 * UNIT_UM);
        add(
                "Friction of a medium ball on hard synthetic under 20 units",
                "published oiled values",
                "0.02 to 0.05",
                ValidationRow.format("%.4f", under20),
                under20 >= 0.02 && under20 <= 0.05);
        double rise = under20 - law.coefficient(40 * UNIT_UM);
        add(
                "Friction that a head of 40 units gains when it is halved",
                "0.0085 (computed from published friction), half to double",
                "0.0043 to 0.0170",
                ValidationRow.format("%.4f", rise),
                rise >= 0.00425 && rise <= 0.017);
    }

    private void roll() {
        OilFilm film = Lanes.fresh(Lanes.pattern(39));
        RowMarch march = new RowMarch(LaneGrid.DEFAULT);
        double sumFt = 0;
        for (String style : Lanes.STYLES) {
            Player player = Lanes.player(style);
            Line line = Lanes.start(player, Lanes.pattern(39));
            double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
            double radiusM = player.contact().ball().radiusM();
            march.readInPlay(
                    Delivery.of(player.style().release(), radiusM, laydownM, line.launchRad()),
                    player.hand(),
                    player.contact(),
                    film);
            sumFt += march.rollDistanceM().orElse(LaneGeometry.HEAD_PIN_M) / FOOT_M;
        }
        double meanFt = sumFt / Lanes.STYLES.size();
        add(
                "Where a ball begins to roll, mean of four styles, 39 ft",
                "coaching pages: the last 15 to 20 ft",
                "40 to 45 ft, ± 8",
                ValidationRow.format("%.0f ft", meanFt),
                meanFt >= 32 && meanFt <= 53);
    }

    private void publishedStart() {
        Release release = Release.ofTradeUnits(17.9, 416, 45, 0);
        PlayingStyle style = new PlayingStyle("published", release, Math.toRadians(1.8), "Ji and others (2025)");
        Player player = Lanes.player(style, Lanes.DEFAULT_COVER, Lanes.DEFAULT_SURFACE);
        double laydown = Lanes.start(player, Lanes.pattern(39)).laydownBoard();
        add(
                "Laydown of the published best shot, 17.9 mph, 416 rpm, 45 degrees, at home at 1.8 degrees",
                "Ji, Yang, Dominguez, Hooper and Bester, AIP Advances 15, 045222 (2025)",
                "12 ± 2",
                ValidationRow.format("%.1f", laydown),
                Math.abs(laydown - 12) <= 2);
    }

    private void add(String check, String source, String published, String ours, boolean met) {
        rows.add(new ValidationRow(check, source, published, ours, met, Use.HELD_OUT));
    }
}
