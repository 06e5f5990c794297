package lanetide.squads.model;

import java.util.Arrays;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import lanetide.oilflow.catalogue.DataFile;
import lanetide.oilflow.film.PatternMeasures;
import lanetide.oilflow.lane.LaneGeometry;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;

/**
 * How often bowlers strike, leave one pin and clear what they left, by their scatter at the arrows and the length and
 * ratio of the pattern: what many playings with oil said, for playings without it. Between these by straight lines,
 * beyond them as at the nearest.
 */
public final class PinsWithoutOil {
    private static final double[] FEET = {36, 40, 44};
    private static final double[] LOG_RATIOS =
            DoubleStream.of(1.5, 3, 6, 10).map(StrictMath::log).toArray();

    private final TreeMap<Double, String> levels = new TreeMap<>();
    private final DataFile file = new DataFile(PinsWithoutOil.class, "pins-without-oil.properties");

    /** Reads the data file that ships with the program. */
    public PinsWithoutOil() {
        Levels.shipped().forEach((id, level) -> levels.put(level.spread().laydownM(), id));
    }

    /**
     * Shares of balls.
     *
     * @param strikes of balls at full racks, 0 to 1
     * @param ones balls that leave one pin, of those that are no strikes, 0 to 1
     * @param cleared balls at what was left that leave nothing, 0 to 1
     */
    public record Shares(double strikes, double ones, double cleared) {}

    /**
     * How often bowlers of a level do.
     *
     * @param level the level
     * @param pattern the pattern, as it was measured
     * @return their shares
     */
    public Shares of(Level level, PatternMeasures pattern) {
        return new Shares(
                share(level, pattern, "strikes"), share(level, pattern, "ones"), share(level, pattern, "cleared"));
    }

    private double share(Level level, PatternMeasures pattern, String what) {
        return linear(
                levels.keySet().stream().mapToDouble(each -> each).toArray(),
                levels.values().stream()
                        .mapToDouble(id -> onPattern(id, pattern, what))
                        .toArray(),
                level.spread().laydownM());
    }

    private double onPattern(String level, PatternMeasures pattern, String what) {
        double[] shares = Arrays.stream(FEET)
                .map(each -> linear(
                        LOG_RATIOS, listed(level + "-" + Math.round(each), what), StrictMath.log(pattern.ratio())))
                .toArray();
        return linear(FEET, shares, pattern.lengthM() / LaneGeometry.FOOT_M);
    }

    private double[] listed(String block, String what) {
        return Arrays.stream(file.text(block, what).split(", "))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static double linear(double[] at, double[] values, double where) {
        double within = Math.min(Math.max(where, at[0]), at[at.length - 1]);
        return new LinearInterpolator().interpolate(at, values).value(within);
    }
}
