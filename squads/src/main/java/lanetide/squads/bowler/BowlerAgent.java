package lanetide.squads.bowler;

import lanetide.oilflow.line.Line;

/** How a bowler chooses his lines, and his ball, during an event. */
public interface BowlerAgent {
    /**
     * Steps up to a lane at a full rack. How long its oil has been played on everybody knows.
     *
     * @param gamesOnOil games that groups have played there since it was oiled; 0 where balls move no oil
     */
    default void stepUp(int gamesOnOil) {}

    /**
     * The line he means to play.
     *
     * @param lane lane number
     * @return his line there
     */
    Line line(int lane);

    /**
     * The ball he throws at full racks.
     *
     * @return 0 for the one he began with, 1 for the other one in his bag
     */
    default int ball() {
        return 0;
    }

    /**
     * How often he has changed his ball.
     *
     * @return changes, there and back
     */
    default int ballChanges() {
        return 0;
    }

    /**
     * Learns from a ball that reached the pins at a full rack.
     *
     * @param lane lane number
     * @param sight what he saw of it
     */
    default void learn(int lane, Sight sight) {}

    /** Goes to another pair. */
    default void moveOn() {}
}
