package lanetide.squads.recondition;

import java.util.List;

/**
 * How often, and before which squads, to oil the lanes of an event.
 *
 * @param replications playings of the event from each of its squads on
 * @param sets sets of values that they went through in turn; 1 if all values were as usual
 * @param asPlanned the event's own oilings
 * @param byOilings the cheapest choice of squads with one, two, ... oilings
 * @param best number of oilings that costs least
 * @param low least number that is the best under nine of ten sets; with the usual values alone, in nine of ten redrawn
 *     playings
 * @param high most
 * @param flat how many oilings are not shown to cost more than {@link Interval#SAME_SHARE} more than the best
 * @param sameSquadsShare share of redrawn playings in which the best number of oilings falls to the same squads
 */
public record OilingSchedules(
        int replications,
        int sets,
        OilingSchedule asPlanned,
        List<OilingSchedule> byOilings,
        int best,
        int low,
        int high,
        Interval.Flat flat,
        double sameSquadsShare) {
    /** Most oilings that are looked at. */
    public static final int MAX_OILINGS = 100;

    /** Copies the list. */
    public OilingSchedules {
        byOilings = List.copyOf(byOilings);
    }

    /**
     * The best of all choices.
     *
     * @return the one that costs least
     */
    public OilingSchedule cheapest() {
        return byOilings.get(best - 1);
    }
}
