package lanetide.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;

/**
 * Keeps what the picture of a lane needs: the film by board and foot, and the way of a ball on the best line of each
 * style.
 */
public final class FilmReel implements LaneObserver {
    /** Rows of a kept film: one foot each. */
    static final int FEET = 60;

    /** Points of a kept path: one every five feet, from the foul line to the head pin. */
    static final int PATH_POINTS = 13;

    private static final double PATH_STEP_M = LaneGeometry.HEAD_PIN_M / (PATH_POINTS - 1);

    private final Map<Integer, List<Frame>> frames = new TreeMap<>();
    private RowMarch march;

    /**
     * A lane at one time.
     *
     * @param filmUnits mean film on each board and foot (units of oil): board by board from the right-hand gutter, each
     *     from the foul line
     * @param paths boards of each style's best line at every point of its way, counted from its own gutter; empty if no
     *     line meets the pocket
     */
    @SuppressWarnings("ArrayRecordComponent") // frames are never compared
    record Frame(double[] filmUnits, List<double[]> paths) {}

    @Override
    public void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines) {
        if (march == null) {
            march = new RowMarch(film.grid());
        }
        List<double[]> paths = lines.stream()
                .map(line ->
                        line.best().map(best -> path(line.player(), best, film)).orElse(new double[0]))
                .toList();
        frames.computeIfAbsent(moment.lane(), lane -> new ArrayList<>()).add(new Frame(films(film), paths));
    }

    /** The frames by lane, each in order of time: as an answer lists lanes and games. */
    Map<Integer, List<Frame>> frames() {
        return frames;
    }

    private static double[] films(OilFilm film) {
        double[] units = new double[LaneGeometry.BOARDS * FEET];
        for (int board = 1; board <= LaneGeometry.BOARDS; board++) {
            for (int foot = 0; foot < FEET; foot++) {
                double meanUm = film.meanOnBoardUm(board, foot * LaneGeometry.FOOT_M, (foot + 1) * LaneGeometry.FOOT_M);
                units[(board - 1) * FEET + foot] = meanUm / OilFilm.UNIT_UM;
            }
        }
        return units;
    }

    private double[] path(Player player, Line line, OilFilm film) {
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        double radiusM = player.contact().ball().radiusM();
        march.readInPlay(
                Delivery.of(player.style().release(), radiusM, laydownM, line.launchRad()),
                player.hand(),
                player.contact(),
                film);
        double[] boards = new double[PATH_POINTS];
        for (int i = 0; i < PATH_POINTS; i++) {
            boards[i] = LaneGeometry.metresToBoard(march.positionM(i * PATH_STEP_M));
        }
        return boards;
    }
}
