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
 * @param isChoice whether no other change is at least as good in spread, minutes and cost and better in one (Pareto),
 *     where a gain counts only if it exceeds its noise (one-sided, 95 %), and minutes only if more than three
 */
public record Remedy(
        RemedyChange change,
        double spreadPins,
        double gainPins,
        OptionalDouble gainErrorPins,
        double extraMinutes,
        double extraCost,
        boolean isChoice) {
    /** Standard errors beyond which a gain is shown: the 95 % point of the normal distribution. */
    private static final double SHOWN_ERRORS = 1.645;

    /** By so much may luck move the end of a squad in the one playing that is timed (min, assumption). */
    private static final double LUCKY_MINUTES = 3;

    /**
     * Whether another change is at least as good in everything and better in something. What a change gains within its
     * noise counts for nothing, and where nothing is gained at all the event may as well stay as it is.
     */
    boolean isBeatenBy(Remedy other) {
        boolean asGood = other.judgedSpreadPins() <= judgedSpreadPins()
                && other.judgedMinutes() <= judgedMinutes()
                && other.extraCost <= extraCost;
        boolean better = other.judgedSpreadPins() < judgedSpreadPins()
                || other.judgedMinutes() < judgedMinutes()
                || other.extraCost < extraCost
                || (other.isAsItIs() && !isAsItIs());
        return asGood && better;
    }

    /** The spread after it if that is shown to differ from the spread before, else the spread before. */
    private double judgedSpreadPins() {
        boolean shown = gainErrorPins.isPresent() && Math.abs(gainPins) > SHOWN_ERRORS * gainErrorPins.getAsDouble();
        return shown ? spreadPins : spreadPins + gainPins;
    }

    private double judgedMinutes() {
        return Math.abs(extraMinutes) <= LUCKY_MINUTES ? 0 : extraMinutes;
    }

    private boolean isAsItIs() {
        return change.kind() == RemedyChange.Kind.AS_IT_IS;
    }

    Remedy choice(boolean choice) {
        return new Remedy(change, spreadPins, gainPins, gainErrorPins, extraMinutes, extraCost, choice);
    }
}
