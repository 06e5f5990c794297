package lanetide.oilflow.line;

import java.util.function.DoublePredicate;
import java.util.function.Predicate;

/**
 * Room to miss the target: how far an average shot may miss its board at the arrows, from the line's own laydown board,
 * and still hit the pocket. To each side it is the smallest miss that does not, found by steps of a quarter board and
 * then narrowed down to a sixty-fourth; so a gap narrower than a quarter board may be stepped over.
 *
 * <p>On a lane without friction a miss at 15 ft is four times as large at 60 ft, so a pocket of 1.25 boards either side
 * leaves 0.31 boards: what lies above that is the lane's help.
 *
 * @param outsideBoards room toward the gutter on the delivery side (boards at the arrows), 0 to {@link #MAX_BOARDS}
 * @param insideBoards room away from it (boards at the arrows), 0 to {@link #MAX_BOARDS}
 */
public record MissRoom(double outsideBoards, double insideBoards) {
    /** No more room than this is looked for: two arrows. */
    public static final double MAX_BOARDS = 10;

    private static final double STEP_BOARDS = 0.25;
    private static final double FINEST_BOARDS = 1.0 / 64;

    /**
     * Both sides together.
     *
     * @return boards at the arrows
     */
    public double totalBoards() {
        return outsideBoards + insideBoards;
    }

    /** Looks for the room around a line, given whether a line hits the pocket. */
    static MissRoom around(Line line, Predicate<Line> hits) {
        if (!hits.test(line.missed(0))) {
            return new MissRoom(0, 0);
        }
        return new MissRoom(room(miss -> hits.test(line.missed(-miss))), room(miss -> hits.test(line.missed(miss))));
    }

    /** Room to one side of a line that hits. */
    private static double room(DoublePredicate hits) {
        double good = STEP_BOARDS;
        while (good < MAX_BOARDS && hits.test(good)) {
            good += STEP_BOARDS;
        }
        if (good >= MAX_BOARDS) {
            return good;
        }
        return narrowed(hits, good - STEP_BOARDS, good);
    }

    private static double narrowed(DoublePredicate hits, double good, double poor) {
        double inside = good;
        double outside = poor;
        while (outside - inside > FINEST_BOARDS) {
            double middle = (inside + outside) / 2;
            if (hits.test(middle)) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return (inside + outside) / 2;
    }
}
