package lanetide.squads.play;

import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.line.Line;

/** How a bowler chooses his lines, and his ball, during an event. */
interface BowlerAgent {
    /** The line he means to play on a lane. */
    Line line(int lane);

    /** The ball he throws at full racks: 0 for the one he began with, 1 for the other one in his bag. */
    default int ball() {
        return 0;
    }

    /** How often he has changed his ball. */
    default int ballChanges() {
        return 0;
    }

    /** Stands ready for a ball at a full rack. Whoever is no more than a bowler sees nothing of the oil, and does nothing. */
    default void look(int lane, OilFilm film) {}

    /** Learns from a ball that reached the pins at a full rack. */
    default void learn(int lane, Sight sight) {}

    /** Goes to another pair. */
    default void moveOn() {}
}
