package lanetide.cli.scenario.key;

import java.util.Map;
import java.util.Optional;
import lanetide.oilflow.lane.LaneGeometry;

/**
 * Values that a scenario may have and that no lane, ball or bowler in use is known to have. A value beyond them is
 * played and told with a warning: what the model says of it was held to nothing. All such limits stand here; what a key
 * refuses stands with the key.
 *
 * @param range what is plausible, in the base unit of the key
 * @param reason why, as a sentence
 */
public record Plausible(Range range, String reason) {
    private static final double FOOT_M = LaneGeometry.FOOT_M;
    private static final double MPH_MPS = Measure.SPEED.usualUnit().toBase();
    private static final double RPM_RADPS = Measure.REV_RATE.usualUnit().toBase();

    private static final Map<Key<?>, Plausible> ALL = Map.ofEntries(
            Map.entry(
                    PatternKeys.VOLUME,
                    between(
                            12,
                            40,
                            "Patterns in use hold 17 to 35 mL (from memory), and lines were held to coaches' rules from 20 to"
                                    + " 30 mL.")),
            Map.entry(
                    PatternKeys.LENGTH,
                    between(
                            30 * FOOT_M,
                            52 * FOOT_M,
                            "Patterns in use are 32 to 52 ft long (common practice, no source), and lines were held to"
                                    + " coaches' rules from 35 to 45 ft.")),
            Map.entry(PatternKeys.RATIO, ratio()),
            Map.entry(PatternKeys.LEFT_RATIO, ratio()),
            Map.entry(
                    EventKeys.GAMES,
                    between(
                            1,
                            24,
                            "Bowlers tire, and wear was held to published facts up to 24 games on a lane (Thompson, 2012).")),
            Map.entry(
                    OwnKeys.ARROWS,
                    between(
                            0.3,
                            2.5,
                            "Published scatter at the arrows is 0.65 to 1.46 boards for averages over 220 to 160 (O'Keefe, US"
                                    + " Bowler, July 2012).")),
            Map.entry(
                    OwnKeys.SPEED,
                    between(
                            12 * MPH_MPS,
                            24 * MPH_MPS,
                            "Speeds at release are 14 to 22 mph (common practice, no source).")),
            Map.entry(
                    OwnKeys.REV_RATE,
                    between(
                            20 * RPM_RADPS,
                            650 * RPM_RADPS,
                            "Rev rates are 50 to 600 rpm (common practice, no source).")));

    private static Plausible between(double low, double high, String reason) {
        return new Plausible(Range.between(low, high), reason);
    }

    private static Plausible ratio() {
        return between(
                1,
                12,
                "Lines were held to coaches' rules from 1.5:1 to 8:1; more than 12:1 is not laid (from memory).");
    }

    /**
     * What is plausible of a key's value.
     *
     * @param key the key
     * @return the limits and why; empty where everything that the key allows is plausible
     */
    public static Optional<Plausible> of(Key<?> key) {
        return Optional.ofNullable(ALL.get(key));
    }

    /** All keys that have such limits. */
    static Map<Key<?>, Plausible> all() {
        return ALL;
    }
}
