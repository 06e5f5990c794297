package lanetide.squads.fairness;

import java.util.List;
import java.util.Optional;

/**
 * A change of the event and what it does.
 *
 * @param change what is changed; the first of a list is the event as it is
 * @param playings how often it was played out
 * @param underAllSets whether it is one of the best, which were played out under all sets of values, or the event as it
 *     is
 * @param spreadPins largest difference between two groups' expected advantages after it (pins a game), noise taken out:
 *     that of the event as it is, less the gain
 * @param gainPins how much smaller that is (pins a game): by the share that it is in rounds that both met
 * @param gain what is known of that gain; empty for fewer than three rounds
 * @param extraMinutes how much later the squad that is delayed most is done (min); negative if all are done earlier
 * @param extraCost what more oiling costs, in the user's currency
 * @param isChoice whether it is one of the best, there is a gain in nine of ten sets of values and no other such change
 *     is at least as good in spread, minutes and cost and better in one (Pareto), where minutes count only if more than
 *     three; the event as it is, if no such change is at least as good in all
 * @param leastRegret whether under the set of values in which it fares worst, it falls least behind the best change
 *     there; of several the first
 */
public record Remedy(
        RemedyChange change,
        int playings,
        boolean underAllSets,
        double spreadPins,
        double gainPins,
        Optional<SpreadGain> gain,
        double extraMinutes,
        double extraCost,
        boolean isChoice,
        boolean leastRegret) {
    /** Share of the sets in which a gain, or a loss, has to be shown. */
    private static final double SHOWN_SHARE = 0.9;
    /** By so much may luck move the end of a squad in the one playing that is timed (min, assumption). */
    private static final double LUCKY_MINUTES = 3;

    /** Whether it is to be chosen among some changes, itself among them. */
    boolean isChoiceAmong(List<Remedy> all) {
        return (isAsItIs() || isShown())
                && all.stream()
                        .filter(other -> other.isAsItIs() || other.isShown())
                        .noneMatch(this::isBeatenBy);
    }

    /** Whether another change is at least as good in everything and better in something. */
    private boolean isBeatenBy(Remedy other) {
        boolean asGood = other.judgedSpreadPins() <= judgedSpreadPins()
                && other.judgedMinutes() <= judgedMinutes()
                && other.extraCost <= extraCost;
        boolean better = other.judgedSpreadPins() < judgedSpreadPins()
                || other.judgedMinutes() < judgedMinutes()
                || other.extraCost < extraCost
                || (other.isAsItIs() && !isAsItIs());
        return asGood && better;
    }

    /** The spread after it if that is shown to be smaller than the spread before. */
    private double judgedSpreadPins() {
        return isShown() ? spreadPins : spreadPins + gainPins;
    }

    /**
     * Whether it is shown to make the event more even.
     *
     * @return true if it was tried under all sets of values, and there is a gain in nine of ten; with one set, if it
     *     exceeds its luck
     */
    public boolean isShown() {
        return underAllSets
                && gain.filter(known -> known.shownShare() >= SHOWN_SHARE).isPresent();
    }

    private double judgedMinutes() {
        return Math.abs(extraMinutes) <= LUCKY_MINUTES ? 0 : extraMinutes;
    }

    boolean isAsItIs() {
        return change.kind() == RemedyChange.Kind.AS_IT_IS;
    }

    Remedy judged(boolean choice, boolean least) {
        return new Remedy(
                change, playings, underAllSets, spreadPins, gainPins, gain, extraMinutes, extraCost, choice, least);
    }
}
