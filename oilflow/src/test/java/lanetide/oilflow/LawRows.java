package lanetide.oilflow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.film.Levelling;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.motion.RefereeMatch;
import lanetide.oilflow.motion.RefereeMatch.Difference;

/** Rows of the validation table about the laws and the arithmetic themselves. */
final class LawRows {
    private static final String OWN_DEMAND =
            "our own demand; adaptive integration of the full equations, Dormand and Prince 8(5,3)";

    private final List<ValidationRow> rows = new ArrayList<>();

    private LawRows() {
        referee();
        levelling();
    }

    static List<ValidationRow> rows() {
        return new LawRows().rows;
    }

    private void referee() {
        List<Difference> worn = RefereeMatch.onWornFilms();
        referee("fresh films, rows of a foot", RefereeMatch.onFreshFilms().get(0));
        referee("worn films, rows of a foot", worn.get(0));
        referee("the same worn films, rows cut into eight", worn.get(worn.size() - 1));
    }

    private void referee(String films, Difference difference) {
        add(
                "Largest difference of the march from its referee, " + difference.pinShots() + " random shots, "
                        + films,
                OWN_DEMAND,
                "within 0.01 board and 0.02°",
                ValidationRow.format("%.3f board, %.3f°", difference.worstBoards(), difference.worstDeg()),
                difference.worstBoards() <= 0.01 && difference.worstDeg() <= 0.02);
        add(
                "The same, root mean square",
                OWN_DEMAND,
                "within 0.01 board",
                ValidationRow.format("%.4f board", difference.rmsBoards()),
                difference.rmsBoards() <= 0.01);
    }

    /** Oil of 30 mN/m, 850 kg/m^3 and 40 mPa s; a track 4 mm wide is half a wave. */
    private void levelling() {
        Levelling law = new Levelling(0.030, 850, 0.040, 0);
        levelling("20 um", law.timeConstantS(20, 0.008) / 60, 15, 0.5, "min");
        levelling("10 um", law.timeConstantS(10, 0.008) / 3600, 2.0, 0.05, "h");
        levelling("5 um", law.timeConstantS(5, 0.008) / 3600, 16, 0.5, "h");
        levelling("2 um", law.timeConstantS(2, 0.008) / 86_400, 10, 0.5, "d");
        double left = 100 * loneTrackLeft(law, 15 * 60);
        add(
                "Depth left of a lone track one column wide on 20 um after 15 min",
                "Orchard (1962) with gravity, integrated over all waves of an endless film",
                "73 ± 2 %",
                ValidationRow.format("%.0f %%", left),
                Math.abs(left - 73) <= 2);
    }

    private void levelling(String film, double ours, double computed, double rounding, String unit) {
        add(
                "Time in which tracks 4 mm wide, side by side, fall to 37 % on " + film,
                "Orchard (1962) with gravity, computed by hand",
                ValidationRow.format("%s ± %s %s", computed, rounding, unit),
                ValidationRow.format("%.2f %s", ours, unit),
                Math.abs(ours - computed) <= rounding);
    }

    private static double loneTrackLeft(Levelling law, double dwellS) {
        OilFilm film = OilFilm.bare(LaneGrid.DEFAULT);
        Arrays.fill(film.cellsUm(), 20);
        int rows = film.grid().rows();
        int track = film.grid().columns() / 2;
        double depthUm = 0.4;
        film.cellsUm()[track * rows] -= depthUm;
        law.relax(film, dwellS);
        return (20 - film.thicknessUm(track, 0)) / depthUm;
    }

    private void add(String check, String source, String published, String ours, boolean met) {
        rows.add(new ValidationRow(check, source, published, ours, met, Use.CHECK));
    }
}
