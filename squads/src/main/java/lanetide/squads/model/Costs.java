package lanetide.squads.model;

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
 */
public record Costs(
        String currency,
        double oilLitre,
        double cleanerLane,
        double labourHour,
        double laneHour,
        double pin,
        double unplanned) {
    /** The costs used where nobody states others (assumptions). */
    public static final Costs USUAL = new Costs("EUR", 20, 0.2, 20, 10, 0.1, 3);

    private static final double LARGEST = 1e9;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a cost is negative or above a thousand million, or {@code unplanned < 1}
     */
    public Costs {
        Require.named(currency, "currency");
        Require.inRange(oilLitre, "cost of a litre of oil", 0, LARGEST);
        Require.inRange(cleanerLane, "cost of cleaner for a lane", 0, LARGEST);
        Require.inRange(labourHour, "cost of an hour of labour", 0, LARGEST);
        Require.inRange(laneHour, "worth of a lane's hour", 0, LARGEST);
        Require.inRange(pin, "worth of a pin", 0, LARGEST);
        Require.inRange(unplanned, "cost of an unplanned oiling in planned ones", 1, LARGEST);
    }
}
