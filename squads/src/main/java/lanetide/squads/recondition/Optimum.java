package lanetide.squads.recondition;

/**
 * The best length of a cycle.
 *
 * @param games games from one oiling to the next, or any other unit of age
 * @param costPerGame cost of a cycle over its mean length
 */
public record Optimum(double games, double costPerGame) {}
