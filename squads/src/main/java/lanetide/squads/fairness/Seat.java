package lanetide.squads.fairness;

import lanetide.oilflow.lane.Hand;

/**
 * A place in an event that any bowler could take.
 *
 * @param squad squad, counted from zero
 * @param group group within the squad, counted from zero
 * @param startPair pair of the group's first game, counted from zero
 * @param hand delivery side of whoever sits here
 */
record Seat(int squad, int group, int startPair, Hand hand) {}
