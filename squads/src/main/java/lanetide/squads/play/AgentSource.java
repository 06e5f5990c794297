package lanetide.squads.play;

import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.Player;
import lanetide.squads.bowler.BowlerAgent;
import lanetide.squads.model.Bowler;

/** Gives every bowler of a playing the agent that chooses his lines. */
@FunctionalInterface
interface AgentSource {
    /** The agent of a bowler, who is such a player at full racks and comes for such a pattern. */
    BowlerAgent of(Bowler bowler, Player player, OilPattern pattern);
}
