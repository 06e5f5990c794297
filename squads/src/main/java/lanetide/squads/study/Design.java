package lanetide.squads.study;

import lanetide.squads.play.Setup;

/**
 * What a study plays: which luck, values and seating each number stands for. It is asked by several threads at once.
 */
public interface Design {
    /**
     * What a number stands for.
     *
     * @param number number of a playing, from 0
     * @return the playing
     */
    Playing playing(int number);

    /**
     * Everything that a playing takes.
     *
     * @param playing one of this design
     * @return a setup of its own, that nobody watches
     */
    Setup setup(Playing playing);
}
