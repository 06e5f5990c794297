package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Finals;

/**
 * What the director sets by judgement.
 *
 * @param marginPins largest advantage that still counts as fair (pins a game); empty if the scenario sets none
 * @param limitBoards move of the windows at which a lane counts as failed (boards)
 * @param costs what oiling costs and what it saves
 * @param finals what those who make the cut bowl; empty if it ends with the cut. The event is without them, since only
 *     some commands play them
 * @param assumptions those of these values that the scenario does not state
 */
public record Policy(
        OptionalDouble marginPins,
        double limitBoards,
        Costs costs,
        Optional<Finals> finals,
        List<Assumption> assumptions) {
    /** Copies the list. */
    public Policy {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * The same with finals.
     *
     * @param plan what those who make the cut bowl; empty if it ends with the cut
     * @return the policy
     */
    public Policy with(Optional<Finals> plan) {
        return new Policy(marginPins, limitBoards, costs, plan, assumptions);
    }
}
