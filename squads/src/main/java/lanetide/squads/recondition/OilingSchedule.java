package lanetide.squads.recondition;

import java.util.List;

/**
 * Before which squads of an event all lanes are oiled, and what comes of it.
 *
 * @param squads the squads, counted from zero; the first is always among them
 * @param oilingCost cost of all oilings, and of cleaning the ends of lanes where that is planned, in the user's
 *     currency
 * @param scoresCost what the changed scores cost
 * @param low lower end of the 90 % interval of the cost of both: under the sets of values, or with the usual values
 *     alone over playings that are drawn again
 * @param high upper end
 * @param oilLitres oil laid (litres)
 * @param machineHours hours of all machines together
 * @param spreadPins root mean square change of the expected scores over all games (pins a game)
 * @param worst the squad whose scores change most, counted from zero
 * @param worstPins by how much (pins a game, root mean square)
 * @param paybacks what each oiling but the first saves
 */
public record OilingSchedule(
        List<Integer> squads,
        double oilingCost,
        double scoresCost,
        double low,
        double high,
        double oilLitres,
        double machineHours,
        double spreadPins,
        int worst,
        double worstPins,
        List<Payback> paybacks) {
    /** Copies the lists. */
    public OilingSchedule {
        squads = List.copyOf(squads);
        paybacks = List.copyOf(paybacks);
    }

    /**
     * What it all costs.
     *
     * @return cost of the oilings and of the changed scores
     */
    public double cost() {
        return oilingCost + scoresCost;
    }

    /**
     * What one oiling saves against leaving it out and all others where they are.
     *
     * @param squad the squad before which lanes are oiled, counted from zero
     * @param cost cost of the oiling
     * @param saves what the scores would cost more without it
     * @param payer the squad in which most of that is saved, counted from zero
     * @param payerSaves what is saved there
     */
    public record Payback(int squad, double cost, double saves, int payer, double payerSaves) {}
}
