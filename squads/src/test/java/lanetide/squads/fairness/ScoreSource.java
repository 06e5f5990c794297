package lanetide.squads.fairness;

import lanetide.des.random.RandomStreams;

/** Where scores come from, if not from the simulation. */
@FunctionalInterface
interface ScoreSource {
    /**
     * Plays the event once.
     *
     * @param bowlerAtSeat who sits in each seat
     * @param lanesChange false for lanes that stay as they are laid
     * @param luck streams of the round; the same luck for the same bowler wherever he sits
     * @return mean score of every bowler (pins a game), by bowler
     */
    double[] play(int[] bowlerAtSeat, boolean lanesChange, RandomStreams luck);
}
