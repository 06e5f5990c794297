package lanetide.squads.rotation;

/**
 * A group comes back to a pair it has left. Games bowled there without leaving are one visit.
 *
 * @param group group, counted from zero
 * @param pair pair, counted from zero
 * @param firstGame first game the group bowled there, counted from zero
 * @param againGame game it is back, counted from zero
 */
public record RepeatedVisit(int group, int pair, int firstGame, int againGame) implements RotationFinding {}
