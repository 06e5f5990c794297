package lanetide.oilflow.line;

import java.util.List;

/**
 * Lines that meet the pocket at neighbouring launch angles, with how good each is and where it leaves the pattern.
 *
 * @param lines from the least launch angle to the greatest, at least one
 * @param played the line the bowler plays, one of them
 */
record Valley(List<ValleyLine> lines, Line played) {
    Valley {
        lines = List.copyOf(lines);
    }

    /**
     * The window: around the good line nearest to the played angle, as far as lines stay good. A line is good if it
     * strikes at least a share as often as the best; between a good line and a worse neighbour the edge is
     * interpolated.
     */
    ExitWindow window(double goodShare) {
        double enough = goodShare
                * lines.stream().mapToDouble(ValleyLine::strikeShare).max().orElseThrow();
        int best = nearestGood(enough);
        ValleyLine chosen = lines.get(best);
        double oneEdge = edge(best, -1, enough);
        double otherEdge = edge(best, 1, enough);
        return new ExitWindow(
                Math.min(oneEdge, otherEdge),
                Math.max(oneEdge, otherEdge),
                chosen.exitBoard(),
                chosen.line(),
                played,
                chosen.strikeShare());
    }

    private int nearestGood(double enough) {
        int best = -1;
        for (int i = 0; i < lines.size(); i++) {
            boolean nearer = best < 0 || offRad(i) < offRad(best);
            if (nearer && lines.get(i).strikeShare() >= enough) {
                best = i;
            }
        }
        return best;
    }

    /** Exit board where lines cease to be good on one side. */
    private double edge(int best, int side, double enough) {
        int last = best;
        int next = best + side;
        while (next >= 0 && next < lines.size() && lines.get(next).strikeShare() >= enough) {
            last = next;
            next += side;
        }
        ValleyLine good = lines.get(last);
        if (next < 0 || next >= lines.size()) {
            return good.exitBoard();
        }
        ValleyLine poor = lines.get(next);
        double way = (good.strikeShare() - enough) / (good.strikeShare() - poor.strikeShare());
        return good.exitBoard() + way * (poor.exitBoard() - good.exitBoard());
    }

    private double offRad(int i) {
        return Math.abs(lines.get(i).line().launchRad() - played.launchRad());
    }

    /**
     * A line of the valley.
     *
     * @param line the line
     * @param strikeShare share of strikes over the scatter of the release
     * @param exitBoard where its average shot leaves the pattern
     */
    record ValleyLine(Line line, double strikeShare, double exitBoard) {}
}
