package lanetide.squads.fairness;

import java.util.OptionalDouble;

/**
 * A change of the event and what it does.
 *
 * @param change what is changed; the first of a list is the event as it is
 * @param spreadPins largest difference between two groups' expected advantages after it (pins a game), noise taken out
 * @param gainPins how much smaller that is than in the event as it is (pins a game)
 * @param gainErrorPins standard error of the gain (jackknife over the rounds, which meet the same luck); empty for
 *     fewer than three rounds
 * @param extraMinutes how much later the squad that is delayed most is done (min); negative if all are done earlier
 * @param extraCost what more oiling costs, in the user's currency
 * @param isChoice whether no other change is at least as good in spread, minutes and cost and better in one (Pareto)
 */
public record Remedy(
        RemedyChange change,
        double spreadPins,
        double gainPins,
        OptionalDouble gainErrorPins,
        double extraMinutes,
        double extraCost,
        boolean isChoice) {
    /** Whether another change is at least as good in everything and better in something. */
    boolean isBeatenBy(Remedy other) {
        boolean asGood =
                other.spreadPins <= spreadPins && other.extraMinutes <= extraMinutes && other.extraCost <= extraCost;
        boolean better =
                other.spreadPins < spreadPins || other.extraMinutes < extraMinutes || other.extraCost < extraCost;
        return asGood && better;
    }

    Remedy choice(boolean choice) {
        return new Remedy(change, spreadPins, gainPins, gainErrorPins, extraMinutes, extraCost, choice);
    }
}
