package lanetide.oilflow;

import java.util.List;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.LaneSurvey.Station;
import lanetide.oilflow.lane.Topography;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RefereeMatch;
import lanetide.oilflow.motion.RefereeMatch.Difference;

/** Rows of the validation table about lanes that are not level. */
final class TopographyRows {
    private static final String SOURCE = "Trunk, What a shock V (2013): legal crowns and tilts";

    private TopographyRows() {}

    static List<ValidationRow> rows() {
        return List.of(referee(), oppositeLanes());
    }

    private static ValidationRow referee() {
        Difference difference = RefereeMatch.onShapedLanes().get(0);
        return new ValidationRow(
                "Largest difference of the march from its referee, " + difference.pinShots()
                        + " random shots, fresh films on lanes out of level up to the limits, rows of a foot",
                "our own demand; adaptive integration of the full equations, Dormand and Prince 8(5,3)",
                "within 0.01 board and 0.02°",
                ValidationRow.format("%.3f board, %.3f°", difference.worstBoards(), difference.worstDeg()),
                difference.worstBoards() < 0.01
                        && difference.worstDeg() < 0.02
                        && difference.gutterShotsOfOneOnly() == 0,
                Use.CHECK);
    }

    /**
     * The widest that two legal lanes can differ: leaning and bulging one way over their whole length, against the
     * other way.
     */
    private static ValidationRow oppositeLanes() {
        LineFinder finder = Lanes.finder();
        OilFilm fresh = Lanes.fresh(Lanes.pattern(39));
        double most = 0;
        double least = Double.POSITIVE_INFINITY;
        for (String style : Lanes.STYLES) {
            Player player = Lanes.player(style);
            Line line = Lanes.start(player, Lanes.pattern(39));
            double light = finder.arrivalBoard(player, fresh.on(lane(LaneSurvey.LIMIT_M)), line);
            double high = finder.arrivalBoard(player, fresh.on(lane(-LaneSurvey.LIMIT_M)), line);
            most = Math.max(most, high - light);
            least = Math.min(least, high - light);
        }
        return new ValidationRow(
                "Boards at the pins between two lanes at opposite limits of tilt and crown (40/1000 in), one and the same shot,"
                        + " four styles, 39 ft",
                SOURCE,
                "8 to 10 boards",
                ValidationRow.format("%.1f to %.1f boards", least, most),
                most >= 8 && most <= 10,
                Use.CHECK);
    }

    private static Topography lane(double heightM) {
        return new LaneSurvey(List.of(new Station(0, heightM, heightM)));
    }
}
