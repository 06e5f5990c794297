package lanetide.squads.machines;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;

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
        return pairAllAtOnce(
                lanes, event.pattern().volumeMl(), how, hours(event.centre().machines(), lanes, how));
    }

    /**
     * What is done to the lanes of a squad in one go.
     *
     * @param squad the squad's place in the event
     * @return cost of all its lanes; 0 if they are left as they are
     */
    public double before(int squad) {
        return before(squad, event.squads().get(squad).conditioning());
    }

    /**
     * The same if something else is done to them. Lanes that are not open yet bring nothing in.
     *
     * @param squad the squad's place in the event
     * @param how what is done
     * @return cost of all its lanes; 0 if they are left as they are
     */
    public double before(int squad, Conditioning how) {
        SquadPlan plan = event.plans().get(squad);
        List<Integer> lanes = plan.lanes(event.centre());
        Set<Double> volumes =
                lanes.stream().map(lane -> plan.patterns().on(lane).volumeMl()).collect(Collectors.toSet());
        double meanMl = volumes.size() == 1
                ? volumes.iterator().next()
                : lanes.stream()
                        .mapToDouble(lane -> plan.patterns().on(lane).volumeMl())
                        .average()
                        .orElseThrow();
        return how == Conditioning.NONE
                ? 0
                : plan.pairs(event.centre()).size() * pairAllAtOnce(lanes, meanMl, how, openHours(squad, lanes, how));
    }

    private double openHours(int squad, List<Integer> lanes, Conditioning how) {
        Squad of = event.squads().get(squad);
        long workMs = MachinePlan.of(event.centre().machines(), lanes, how).durationMs();
        long beginMs = of.arrangements().oiling().beginMs(of.startMs(), workMs);
        return costs.openMs(beginMs, beginMs + workMs) / MS_PER_HOUR;
    }

    private double pairAllAtOnce(List<Integer> lanes, double volumeMl, Conditioning how, double idleHours) {
        LaneMachines machines = event.centre().machines();
        double labour = costs.labourHour() * machines.most() * hours(machines, lanes, how) / lanes.size();
        return LANES * (material(volumeMl, how) + labour + costs.laneHour() * idleHours);
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
        return LANES * (material(event.pattern().volumeMl(), how) + costs.laneHour() * hours)
                + costs.labourHour() * (hours + FETCH_HOURS);
    }

    private static double hours(LaneMachines machines, List<Integer> lanes, Conditioning how) {
        return MachinePlan.of(machines, lanes, how).durationMs() / MS_PER_HOUR;
    }

    private double material(double volumeMl, Conditioning how) {
        return (how.laysOil() ? volumeMl / 1000 * costs.oilLitre() : 0) + (how.cleans() ? costs.cleanerLane() : 0);
    }
}
