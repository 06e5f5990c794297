package lanetide.oilflow.film;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What wear does to something that is read off a lane, such as where a shot meets the pins: how much of it each stretch
 * of the lane takes back if that stretch alone is made fresh again. What the stretches do together and none alone (a
 * ball that heads turned early meets other boards of the mid-lane) is what is left, so that the parts always make the
 * whole. All in the unit of what is read.
 *
 * @param all what is read, less what was read on the lane as it was laid
 * @param heads what is read, less what would be with the heads fresh
 * @param midLane the same with the mid-lane fresh
 * @param pastEnd the same without what was carried past the end of the pattern
 */
public record ByStretch(double all, double heads, double midLane, double pastEnd) {
    /**
     * Reads a lane as it is, as it was laid, and with one stretch after the other made fresh.
     *
     * @param reading what is read off a lane
     * @param worn the lane as it is
     * @param laid the same lane as it was laid
     * @param patternEndM where the pattern ends (m)
     * @return what is due to what
     */
    public static ByStretch of(ToDoubleFunction<OilFilm> reading, OilFilm worn, OilFilm laid, double patternEndM) {
        double now = reading.applyAsDouble(worn);
        ToDoubleFunction<Stretch> part =
                stretch -> now - reading.applyAsDouble(stretch.madeFresh(worn, laid, patternEndM));
        return new ByStretch(
                now - reading.applyAsDouble(laid),
                part.applyAsDouble(Stretch.HEADS),
                part.applyAsDouble(Stretch.MID_LANE),
                part.applyAsDouble(Stretch.PAST_END));
    }

    /**
     * Part by part the mean of several, which is again one whose parts make the whole.
     *
     * @param several at least one
     * @return the mean
     * @throws IllegalArgumentException if there is none
     */
    public static ByStretch mean(List<ByStretch> several) {
        return new ByStretch(
                mean(several, ByStretch::all),
                mean(several, ByStretch::heads),
                mean(several, ByStretch::midLane),
                mean(several, ByStretch::pastEnd));
    }

    private static double mean(List<ByStretch> several, ToDoubleFunction<ByStretch> part) {
        return several.stream()
                .mapToDouble(part)
                .average()
                .orElseThrow(() -> new IllegalArgumentException("a mean of nothing"));
    }

    /**
     * To tenths, as people are told: what is left over is left over of the rounded parts.
     *
     * @return the same, rounded
     */
    public ByStretch inTenths() {
        return new ByStretch(tenth(all), tenth(heads), tenth(midLane), tenth(pastEnd));
    }

    private static double tenth(double value) {
        return Math.rint(10 * value) / 10;
    }

    /**
     * What the stretches do together and none alone.
     *
     * @return the rest
     */
    public double together() {
        return all - heads - midLane - pastEnd;
    }
}
