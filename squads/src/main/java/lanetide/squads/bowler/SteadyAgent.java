package lanetide.squads.bowler;

import lanetide.oilflow.line.Line;

/**
 * A bowler who stays on the line he brought, whatever his balls do: the lower bound for those who learn.
 *
 * @param brought his line
 */
public record SteadyAgent(Line brought) implements BowlerAgent {
    @Override
    public Line line(int lane) {
        return brought;
    }
}
