package lanetide.squads.result;

import java.util.Optional;
import lanetide.oilflow.lane.Hand;

/**
 * Where a style should leave the pattern.
 *
 * @param style playing style
 * @param hand delivery side; boards are counted from its gutter
 * @param boards the window; empty if no line meets the pocket
 */
public record StyleWindow(String style, Hand hand, Optional<Boards> boards) {
    /**
     * Exit boards of a window ({@link lanetide.oilflow.line.ExitWindow}).
     *
     * @param low outermost exit board from which an average shot still hits the pocket
     * @param high innermost such board
     * @param best exit board of an average shot on the line played
     */
    public record Boards(double low, double high, double best) {
        /**
         * The board in the middle of the window.
         *
         * @return board from the own gutter
         */
        public double middle() {
            return (low + high) / 2;
        }
    }
}
