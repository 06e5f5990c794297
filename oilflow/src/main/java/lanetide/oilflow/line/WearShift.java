package lanetide.oilflow.line;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.Stretch;

/**
 * Why an average shot on a line meets the pins elsewhere than when the lane was laid: how many boards of it each
 * stretch of the lane takes back if that stretch alone is made fresh again. What the stretches do together and none
 * alone (a ball that heads turned early meets other boards of the mid-lane) is what is left, so that the parts always
 * make the whole. Boards are above 0 where the ball meets the pins higher, away from the gutter on its delivery side.
 *
 * @param allBoards where the shot meets the pins, less where it met them on the lane as it was laid (boards)
 * @param headsBoards where it meets them, less where it would with the heads fresh (boards)
 * @param midLaneBoards the same with the mid-lane fresh (boards)
 * @param pastEndBoards the same without what was carried past the end of the pattern (boards)
 */
public record WearShift(double allBoards, double headsBoards, double midLaneBoards, double pastEndBoards) {
    /**
     * Looks what wear does to a line.
     *
     * @param finder rolls the shots
     * @param player who throws
     * @param line the line; a shot that leaves the lane counts where it left it
     * @param worn the lane as it is
     * @param laid the same lane as it was laid
     * @param patternEndM where the pattern ends (m)
     * @return what is due to what
     */
    public static WearShift of(
            LineFinder finder, Player player, Line line, OilFilm worn, OilFilm laid, double patternEndM) {
        double now = finder.arrivalBoard(player, worn, line);
        ToDoubleFunction<Stretch> part =
                stretch -> now - finder.arrivalBoard(player, stretch.madeFresh(worn, laid, patternEndM), line);
        return new WearShift(
                now - finder.arrivalBoard(player, laid, line),
                part.applyAsDouble(Stretch.HEADS),
                part.applyAsDouble(Stretch.MID_LANE),
                part.applyAsDouble(Stretch.PAST_END));
    }

    /**
     * Part by part the mean of several, which is again one whose parts make the whole.
     *
     * @param shifts at least one
     * @return the mean
     * @throws IllegalArgumentException if there is none
     */
    public static WearShift mean(List<WearShift> shifts) {
        return new WearShift(
                mean(shifts, WearShift::allBoards),
                mean(shifts, WearShift::headsBoards),
                mean(shifts, WearShift::midLaneBoards),
                mean(shifts, WearShift::pastEndBoards));
    }

    private static double mean(List<WearShift> shifts, ToDoubleFunction<WearShift> part) {
        return shifts.stream()
                .mapToDouble(part)
                .average()
                .orElseThrow(() -> new IllegalArgumentException("a mean of no shifts"));
    }

    /**
     * To tenths of a board, as people are told: what is left over is left over of the rounded parts.
     *
     * @return the same, rounded
     */
    public WearShift inTenths() {
        return new WearShift(tenth(allBoards), tenth(headsBoards), tenth(midLaneBoards), tenth(pastEndBoards));
    }

    private static double tenth(double boards) {
        return Math.rint(10 * boards) / 10;
    }

    /**
     * What the stretches do together and none alone.
     *
     * @return boards
     */
    public double togetherBoards() {
        return allBoards - headsBoards - midLaneBoards - pastEndBoards;
    }
}
