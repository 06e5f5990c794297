package lanetide.squads.recondition;

/**
 * The choice that is regretted least, whatever is true.
 *
 * @param games games on a pair from one oiling of all lanes to the next
 * @param mostRegret what a pair's game costs more than the best, under the set of values in which that is most
 */
public record LeastRegret(int games, double mostRegret) {}
