package lanetide.squads.model;

import java.util.List;

/**
 * What can go wrong with lanes, and what is done then.
 *
 * @param jams short stops of a pinsetter
 * @param faults faults of a lane
 * @param planned faults at times known beforehand
 * @param crews people who put lanes in order, each one lane at a time, first come, first served; at least 1
 * @param remedy what the director does with a group when the work takes longer than his patience
 * @param patienceMs longest work for which a group waits in any case (ms), at least 0
 */
public record Incidents(
        Stops jams, Stops faults, List<PlannedFault> planned, int crews, FaultResponse remedy, long patienceMs) {
    /** Nothing goes wrong. */
    public static final Incidents NONE =
            new Incidents(Stops.NEVER, Stops.NEVER, List.of(), 1, FaultResponse.WAIT, 10 * 60_000);

    /**
     * Copies the list and checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public Incidents {
        planned = List.copyOf(planned);
        if (crews < 1 || patienceMs < 0) {
            throw new IllegalArgumentException(
                    "incidents: crews (" + crews + ") must be at least 1, patience (" + patienceMs + " ms) at least 0");
        }
    }
}
