package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.OptionalDouble;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.squads.model.Costs;

/**
 * What the director sets by judgement.
 *
 * @param marginPins largest advantage that still counts as fair (pins a game); empty if the scenario sets none
 * @param limitBoards move of the windows at which a lane counts as failed (boards)
 * @param costs what oiling costs and what it saves
 * @param assumptions those of these values that the scenario does not state
 */
public record Policy(OptionalDouble marginPins, double limitBoards, Costs costs, List<Assumption> assumptions) {
    /** Copies the list. */
    public Policy {
        assumptions = List.copyOf(assumptions);
    }
}
