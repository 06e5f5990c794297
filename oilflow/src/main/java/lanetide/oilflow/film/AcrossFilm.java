package lanetide.oilflow.film;

import lanetide.oilflow.lane.Hand;

/** Film across the lane at one distance, on a scale of the pattern's own. */
@FunctionalInterface
public interface AcrossFilm {
    /** A lane without oil there. */
    AcrossFilm NONE = (gutter, board) -> 0;

    /**
     * Film at a place. Each half is asked from its own gutter, so that mirror images are alike to the last bit.
     *
     * @param gutter the nearer gutter, right or left as a bowler sees it
     * @param board board from that gutter, 0.5 to 20, fractions allowed
     * @return thickness relative to other places of the same pattern, 0 or more
     */
    double share(Hand gutter, double board);
}
