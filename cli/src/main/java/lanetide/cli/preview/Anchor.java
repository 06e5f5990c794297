package lanetide.cli.preview;

import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;

/**
 * Where a bowler stands on the fresh pattern he finds in practice, whatever is true of the oil; what a forecast tells
 * him is how far the lanes then go from there. So windows under a set of values are told as far from the line of the
 * usual values on the fresh pattern as they are from that of the set.
 *
 * @param laydownBoards by how much the usual line is laid down further in
 * @param launchRad by how much it points further out
 * @param exitBoards by how much it leaves the pattern further in
 */
record Anchor(double laydownBoards, double launchRad, double exitBoards) {
    /** Between the lines on the fresh pattern under the usual values and under a set. */
    static Anchor between(ExitWindow usual, ExitWindow ofSet) {
        return new Anchor(
                usual.played().laydownBoard() - ofSet.played().laydownBoard(),
                usual.played().launchRad() - ofSet.played().launchRad(),
                usual.exitBoard() - ofSet.exitBoard());
    }

    /** A window under the set, as far from the usual line as it is from the set's. */
    ExitWindow told(ExitWindow window) {
        Line played = window.played();
        return new ExitWindow(
                window.lowBoard() + exitBoards,
                window.highBoard() + exitBoards,
                window.exitBoard() + exitBoards,
                new Line(played.laydownBoard() + laydownBoards, played.launchRad() + launchRad));
    }
}
