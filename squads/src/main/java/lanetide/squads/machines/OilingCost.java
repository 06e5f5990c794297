package lanetide.squads.machines;

import java.util.List;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LanePair;

/**
 * What it costs to oil the lanes of an event.
 *
 * @param costs the costs of its parts
 * @param event the event, for its lanes, machines and pattern
 */
public record OilingCost(Costs costs, Event event) {
    /** Time to fetch the machine and bring it back when a single pair is oiled (assumption). */
    private static final double FETCH_HOURS = 5.0 / 60;

    private static final double MS_PER_HOUR = 3_600_000;
    private static final int LANES = 2;

    /**
     * A pair's share of oiling all lanes in one go: every lane stands still until the last is done.
     *
     * @param how strip and oil, or oil over
     * @return cost of the two lanes of a pair
     */
    public double pairAllAtOnce(Conditioning how) {
        List<Integer> lanes = event.centre().laneNumbers();
        LaneMachines machines = event.centre().machines();
        double hours = hours(machines, lanes, how);
        double labour = costs.labourHour() * machines.most() * hours / lanes.size();
        return LANES * (material(how) + labour + costs.laneHour() * hours);
    }

    /**
     * Oiling a single pair while the others go on.
     *
     * @param how strip and oil, or oil over
     * @return cost of the two lanes of the pair
     */
    public double pairAlone(Conditioning how) {
        LanePair pair = event.centre().pairs().get(0);
        double hours = hours(event.centre().machines().only(1), List.of(pair.left(), pair.right()), how);
        return LANES * (material(how) + costs.laneHour() * hours) + costs.labourHour() * (hours + FETCH_HOURS);
    }

    private static double hours(LaneMachines machines, List<Integer> lanes, Conditioning how) {
        return MachinePlan.of(machines, lanes, how).durationMs() / MS_PER_HOUR;
    }

    private double material(Conditioning how) {
        return event.pattern().volumeMl() / 1000 * costs.oilLitre()
                + (how == Conditioning.STRIP_AND_OIL ? costs.cleanerLane() : 0);
    }
}
