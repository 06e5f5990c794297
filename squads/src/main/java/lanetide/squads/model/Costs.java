package lanetide.squads.model;

import java.util.OptionalLong;
import lanetide.oilflow.Require;

/**
 * What oiling costs and what it saves, in the user's currency. All defaults are assumptions: put in your own.
 *
 * @param currency the currency's short name
 * @param oilLitre a litre of oil
 * @param cleanerLane cleaner for one lane
 * @param labourHour an hour of whoever minds a machine
 * @param laneHour what a lane brings in in an hour, lost while it cannot be played; 0 where lanes are oiled before
 *     opening
 * @param pin what it is worth that one bowler's expected game does not change by one pin
 * @param unplanned how many times as much an oiling costs that stops the play
 * @param opensMs from when on lanes bring something in (ms from midnight of each day); empty if they always do
 */
public record Costs(
        String currency,
        double oilLitre,
        double cleanerLane,
        double labourHour,
        double laneHour,
        double pin,
        double unplanned,
        OptionalLong opensMs) {
    /** The costs used where nobody states others (assumptions). */
    public static final Costs USUAL = new Costs("EUR", 20, 0.2, 20, 10, 0.1, 3);

    private static final double LARGEST = 1e9;
    private static final long DAY_MS = 24 * 3_600_000L;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a cost is negative or above a thousand million, {@code unplanned < 1}, or the
     *     opening is after the day
     */
    public Costs {
        Require.named(currency, "currency");
        Require.inRange(oilLitre, "cost of a litre of oil", 0, LARGEST);
        Require.inRange(cleanerLane, "cost of cleaner for a lane", 0, LARGEST);
        Require.inRange(labourHour, "cost of an hour of labour", 0, LARGEST);
        Require.inRange(laneHour, "worth of a lane's hour", 0, LARGEST);
        Require.inRange(pin, "worth of a pin", 0, LARGEST);
        Require.inRange(unplanned, "cost of an unplanned oiling in planned ones", 1, LARGEST);
        Require.inRange((double) opensMs.orElse(0), "opening time (ms)", 0, DAY_MS);
    }

    /**
     * Costs of lanes that always bring something in.
     *
     * @param currency the currency's short name
     * @param oilLitre a litre of oil
     * @param cleanerLane cleaner for one lane
     * @param labourHour an hour of whoever minds a machine
     * @param laneHour what a lane brings in in an hour, lost while it cannot be played
     * @param pin what it is worth that one bowler's expected game does not change by one pin
     * @param unplanned how many times as much an oiling costs that stops the play
     * @throws IllegalArgumentException as above
     */
    public Costs(
            String currency,
            double oilLitre,
            double cleanerLane,
            double labourHour,
            double laneHour,
            double pin,
            double unplanned) {
        this(currency, oilLitre, cleanerLane, labourHour, laneHour, pin, unplanned, OptionalLong.empty());
    }

    /**
     * How much of some time lanes bring something in.
     *
     * @param beginMs its beginning (ms from midnight before the first day)
     * @param endMs its end, on the day of which lanes open once
     * @return what of it is not before the opening of that day (ms)
     */
    public long openMs(long beginMs, long endMs) {
        return opensMs.isEmpty()
                ? endMs - beginMs
                : Math.max(0, endMs - Math.max(beginMs, Math.floorDiv(endMs, DAY_MS) * DAY_MS + opensMs.getAsLong()));
    }
}
