package lanetide.squads.rotation;

/**
 * One lane pair in one game: a vertex of the rotation graph.
 *
 * @param game game, counted from zero
 * @param pair pair, counted from zero
 */
public record Visit(int game, int pair) {}
