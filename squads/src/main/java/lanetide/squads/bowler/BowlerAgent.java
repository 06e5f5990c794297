package lanetide.squads.bowler;

import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.oilflow.line.Line;

/** How a bowler chooses his lines, and his ball, during an event. */
public interface BowlerAgent {
    /**
     * Who chooses on a lane: he himself, unless he goes by one thing here and by another there.
     *
     * @param lane lane number
     * @return who chooses there
     */
    default BowlerAgent on(int lane) {
        return this;
    }

    /**
     * Steps up to a lane at a full rack. How long its oil has been played on everybody knows.
     *
     * @param lane lane number
     * @param gamesOnOil games that groups have played there since it was oiled; 0 where lanes stay as they are laid
     * @param told how far those of his hand who bowled there before stood further in, at the end, than the lines they
     *     brought (boards); empty if nobody did, or lanes stay as they are laid
     */
    default void stepUp(int lane, int gamesOnOil, OptionalDouble told) {}

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
     * @return what those who stand by can make of it; empty if he does not judge his balls
     */
    default Optional<LaneRead> learn(int lane, Sight sight) {
        return Optional.empty();
    }

    /**
     * Watches the ball of another bowler of his hand on his pair.
     *
     * @param lane lane number
     * @param read what the other made of it
     * @param unlike how unlike the two throw: 1 for alike, and more
     */
    default void watch(int lane, LaneRead read, double unlike) {}

    /**
     * How far further in he stands than on the line he brought to the event.
     *
     * @param lane lane number
     * @return boards of the feet; empty if he tells nobody
     */
    default OptionalDouble moved(int lane) {
        return OptionalDouble.empty();
    }

    /** Goes to another pair. */
    default void moveOn() {}
}
