package lanetide.squads.model;

import java.util.List;
import lanetide.oilflow.Require;

/**
 * What oiling costs and what it saves, in the user's currency. All defaults are assumptions: put in your own.
 *
 * @param currency the currency's short name
 * @param oilLitre a litre of oil
 * @param cleanerLane cleaner for one lane
 * @param labourHour an hour of whoever minds a machine
 * @param laneHour what a lane brings in in an hour, lost while it cannot be played; 0 where lanes are oiled before opening
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

    /** Time to fetch the machine and bring it back when a single pair is oiled (assumption). */
    private static final double FETCH_HOURS = 5.0 / 60;

    private static final double LARGEST = 1e9;
    private static final double MS_PER_HOUR = 3_600_000;
    private static final int LANES = 2;

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

    /**
     * A pair's share of oiling all lanes in one go: every lane stands still until the last is done.
     *
     * @param event the event, for its lanes, machines and pattern
     * @param how strip and oil, or oil over
     * @return cost of the two lanes of a pair
     */
    public double pairAllAtOnce(Event event, Conditioning how) {
        List<Integer> lanes = event.centre().laneNumbers();
        LaneMachines machines = event.centre().machines();
        double hours = machines.durationMs(lanes, how) / MS_PER_HOUR;
        double labour = labourHour * machines.most() * hours / lanes.size();
        return LANES * (material(event, how) + labour + laneHour * hours);
    }

    /**
     * Oiling a single pair while the others go on.
     *
     * @param event the event, for its machines and pattern
     * @param how strip and oil, or oil over
     * @return cost of the two lanes of the pair
     */
    public double pairAlone(Event event, Conditioning how) {
        LanePair pair = event.centre().pairs().get(0);
        LaneMachines one = event.centre().machines().only(1);
        double hours = one.durationMs(List.of(pair.left(), pair.right()), how) / MS_PER_HOUR;
        return LANES * (material(event, how) + laneHour * hours) + labourHour * (hours + FETCH_HOURS);
    }

    private double material(Event event, Conditioning how) {
        return event.pattern().volumeMl() / 1000 * oilLitre + (how == Conditioning.STRIP_AND_OIL ? cleanerLane : 0);
    }
}
